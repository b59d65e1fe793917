import { LOUDNESS } from '../../../src/voice/packs/pack.ts';
import { printTable } from '../table.ts';
import { cueAt } from './cues.ts';
import { type Cue, type Heard, hear, type Room } from './hear.ts';
import { counted } from './interval.ts';
import { randomFrom } from './random.ts';
import { type Snr, snrName } from './snr.ts';

const LONG_SHARE = 0.75;
const SNRS_DB: readonly Snr[] = [null, 10, 5];

const randomCues = (count: number, seed: number): readonly Cue[] => {
  const random = randomFrom(seed);
  return Array.from({ length: count }, () => ({
    saying: cueAt(random),
    form: random() < LONG_SHARE ? 'long' : 'short',
  }));
};

const rowOf = (heard: readonly Heard[]): readonly string[] => {
  const words = heard.reduce((sum, { said }) => sum + said.length, 0);
  const wrong = heard.reduce((sum, { mistakes }) => sum + mistakes, 0);
  const turning = heard.filter(({ criticalWrong }) => criticalWrong !== null);
  return [
    counted(heard.filter(({ mistakes }) => mistakes > 0).length, heard.length),
    counted(turning.filter(({ criticalWrong }) => criticalWrong === true).length, turning.length),
    `${((100 * wrong) / words).toFixed(1)} %`,
  ];
};

/** Calls as a race has them, from both variants of a pack, clean and in the crowd. `show` prints what was misheard. */
export const printCalls = (
  roomOf: (loudness: (typeof LOUDNESS)[number]) => Room,
  count: number,
  seed: number,
  show: boolean,
): void => {
  const cues = randomCues(count, seed);
  const rows: string[][] = [];
  for (const loudness of LOUDNESS) {
    const room = roomOf(loudness);
    for (const snrDb of SNRS_DB) {
      const heard = hear(cues, room, snrDb, seed);
      rows.push([loudness, snrName(snrDb), ...rowOf(heard)]);
      console.log(rows.at(-1)?.join('   '));
      if (!show) continue;
      for (const one of heard.filter(({ mistakes }) => mistakes > 0))
        console.log(`    said ${one.said.join(' ')}\n    heard ${one.heard.join(' ')}`);
    }
  }
  printTable(
    `Calls misheard (${count} at random, in brackets where the true share lies 95 times in 100)`,
    ['variant', 'voice over crowd', 'any word wrong', 'side, verb or number wrong', 'words wrong'],
    rows,
  );
};
