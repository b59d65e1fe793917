import { raceAloud } from '../../../src/core/aloud/aloud.ts';
import type { Utterance } from '../../../src/core/cues/voicePort.ts';
import { scheduleOf } from '../../../src/core/plan/schedule.ts';
import { demoCourse } from '../../../src/demo/course.ts';
import { demoPlan } from '../../../src/demo/race.ts';
import { type AloudLine, linesOf, stripOf } from '../../../src/session/aloud/aloudFile.ts';
import { RATE_HZ } from '../../../src/voice/file/frames.ts';
import { mp3Of } from '../../../src/voice/file/mp3.ts';
import { toneDurationS } from '../../../src/voice/tones/family.ts';
import { resample } from '../../../src/voicepack/resample.ts';
import { readSound } from '../../support/ffmpegRead.ts';
import { shippedSources, VOICE } from '../../voice/file/shipped.ts';
import { printTable } from '../table.ts';
import { plainWords } from './grammar.ts';
import { RECOGNISER_RATE_HZ, recognise } from './recogniser.ts';
import { align, mistakes } from './score.ts';

const LEAD_S = 10;
/** Silence around a call, and how much longer than live its joints may make it. */
const AROUND_S = 0.3;
const LONGER_S = 0.6;
/** Frames lie up to 12 ms off; a tone's last bit must not be in what is heard. */
const AFTER_TONE_S = 0.05;
/** Even a silent room hisses; a recogniser that gets digital zeros goes astray. */
const HISS = 8e-5;

/** Where the words of a call begin, from the call's begin. */
const wordsFromS = ({ parts }: Utterance): number => {
  const [first] = parts;
  return first !== undefined && 'tone' in first.sound ? toneDurationS(first.sound.tone) + AFTER_TONE_S : 0;
};

/** A call of the file as the recogniser gets it. */
const cutOut = (samples: Float32Array, { utterance }: AloudLine, beginS: number, noise: Float32Array) => {
  const from = Math.round((beginS + wordsFromS(utterance)) * RATE_HZ);
  const length = Math.round((utterance.durationS - wordsFromS(utterance) + LONGER_S) * RATE_HZ);
  const around = Math.round(AROUND_S * RATE_HZ);
  const call = new Float32Array(length + 2 * around);
  call.set(samples.subarray(from, from + length), around);
  return resample(
    { samples: call.map((v, i) => v + HISS * (noise[i % noise.length] ?? 0)), rateHz: RATE_HZ },
    RECOGNISER_RATE_HZ,
  );
};

/** Makes the demo race's sound file as the page does, decodes it, and lets the recogniser listen to each of its calls. */
const hearSoundFile = (
  grammar: string,
  noise: Float32Array,
): readonly { said: readonly string[]; heard: readonly string[]; wrong: number }[] => {
  const aloud = raceAloud(demoPlan, scheduleOf(demoPlan, demoCourse()), VOICE, {
    leadS: LEAD_S,
    places: 'boards',
  });
  const lines = linesOf(aloud);
  const strip = stripOf(lines, aloud.totalS, LEAD_S, shippedSources());
  const { samples } = readSound(Buffer.concat(mp3Of(strip, demoPlan.name)));
  const spoken = lines.flatMap((line, i) =>
    line.utterance.text === '' ? [] : [{ line, beginS: strip.beginsS[i] ?? 0 }],
  );
  const heard = recognise(
    spoken.map(({ line, beginS }) => cutOut(samples, line, beginS, noise)),
    grammar,
  );
  return spoken.map(({ line }, i) => {
    const said = plainWords(line.text);
    return { said, heard: heard[i] ?? [], wrong: mistakes(align(said, heard[i] ?? [])) };
  });
};

/** What the recogniser makes of the sound file, without noise; what was misheard is printed in full. */
export const printSoundFile = (grammar: string, noise: Float32Array): void => {
  const calls = hearSoundFile(grammar, noise);
  const misheard = calls.filter(({ wrong }) => wrong > 0);
  printTable(
    "The demo race's sound file, joined, decoded by ffmpeg, clean",
    ['calls', 'misheard'],
    [[String(calls.length), String(misheard.length)]],
  );
  for (const { said, heard } of misheard)
    console.log(`    said ${said.join(' ')}\n    heard ${heard.join(' ')}`);
};
