import { describe, expect, test } from 'vitest';
import { TONES, type Tone } from '../../../src/core/cues/voicePort.ts';
import { NOTES } from '../../../src/voice/tones/family.ts';
import { shapeOf } from '../../../src/voice/tones/shape.ts';
import { vibrationOf } from '../../../src/voice/tones/vibration.ts';

/** Where the line goes from one place to the next: up, down or level. */
const wayOf = (tone: Tone): string => {
  const heights = shapeOf(tone).notes.flatMap(({ low, high }) => [low, high]);
  return heights
    .slice(1)
    .map((height, i) => Math.sign(Math.round(1000 * (height - (heights[i] ?? 0)))))
    .join(' ');
};

describe.each(TONES)('the drawing of %s', (tone) => {
  const { notes, pulses } = shapeOf(tone);

  test('has each note and each pulse once, in order, inside its frame', () => {
    expect(notes).toHaveLength(NOTES[tone].length);
    expect(pulses).toHaveLength((vibrationOf(tone).length + 1) / 2);
    for (const strokes of [notes, pulses])
      strokes.forEach(({ from, to }, i) => {
        expect(from).toBeLessThan(to);
        expect(from).toBeGreaterThanOrEqual(strokes[i - 1]?.to ?? 0);
        expect(to).toBeLessThanOrEqual(1.0001);
      });
    for (const { low, high } of notes)
      for (const height of [low, high]) {
        expect(height).toBeGreaterThanOrEqual(0);
        expect(height).toBeLessThanOrEqual(1.0001);
      }
  });

  test('is like no other, by the way of its line', () => {
    for (const other of TONES) if (other !== tone) expect(wayOf(other), other).not.toBe(wayOf(tone));
  });
});

test('ease falls and quicken rises from begin to end', () => {
  expect(wayOf('ease')).not.toContain(' 1');
  expect(wayOf('ease')).toContain('-1');
  expect(wayOf('quicken')).not.toContain('-1');
  expect(wayOf('quicken')).toContain('1');
});
