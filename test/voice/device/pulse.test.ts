import { expect, test } from 'vitest';
import { createPulse } from '../../../src/voice/device/pulse.ts';

test('a clock that moves is moving, whatever the context says of its state', () => {
  const pulse = createPulse();
  pulse.look(0, 0);
  expect(pulse.look(0.5, 500)).toBe('moving');
  expect(pulse.look(1, 1000)).toBe('moving');
});

test('a clock that stands is still, and dead after four seconds', () => {
  const pulse = createPulse();
  pulse.look(1, 0);
  pulse.look(1.5, 500);
  expect(pulse.look(1.5, 600)).toBe('moving');
  expect(pulse.look(1.5, 1000)).toBe('still');
  expect(pulse.look(1.5, 4000)).toBe('still');
  expect(pulse.look(1.5, 4600)).toBe('dead');
  expect(pulse.look(1.6, 5000)).toBe('moving');
});

test('a new context begins anew', () => {
  const pulse = createPulse();
  pulse.look(50, 0);
  pulse.look(50.5, 500);
  expect(pulse.look(0, 1000)).toBe('still');
  expect(pulse.look(0.5, 1500)).toBe('moving');
});
