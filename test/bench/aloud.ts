import { mp3Of } from '../../src/voice/file/mp3.ts';
import { framesOf } from '../../src/voice/file/sheaf.ts';
import { fiveHours, madeOf } from '../session/aloud/aloudPlans.ts';
import { bytesOf, PACK } from '../voice/file/shipped.ts';
import { cpuSeconds } from './cpu.ts';
import { fixed, printTable } from './table.ts';

/** What it costs to make the sound file of a marathon in five hours, from the plan to the bytes, as a ratio to copying these bytes once. */
export const printAloud = (): void => {
  const make = (): Buffer => Buffer.concat(mp3Of(madeOf(fiveHours, 60).strip, fiveHours.name));
  const file = make();
  const copyS = cpuSeconds(() => Buffer.from(file));
  const takeApartS = cpuSeconds(() => framesOf(bytesOf(PACK.variants.normal.file)));
  const makeS = cpuSeconds(make);
  printTable(
    'The plan as a sound file: a marathon in five hours',
    ['MB', 'calls', 'processor seconds here', 'times a copy of its bytes', 'of that the pack taken apart, s'],
    [
      [
        fixed(file.length / 1e6, 1),
        String(madeOf(fiveHours, 60).lines.length),
        fixed(makeS, 2),
        fixed(makeS / copyS, 0),
        fixed(takeApartS, 3),
      ],
    ],
  );
};
