import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { LOUDNESS } from '../../../src/voice/packs/pack.ts';
import { voiceOf } from '../../../src/voice/utter.ts';
import { decode } from '../../../src/voicepack/master.ts';
import { resample } from '../../../src/voicepack/resample.ts';
import { cueAt } from './cues.ts';
import { grammarOf } from './grammar.ts';
import { type Cue, type Heard, hear } from './hear.ts';
import { crowd } from './noise.ts';
import { randomFrom } from './random.ts';
import { findRecogniser, RECOGNISER_RATE_HZ } from './recogniser.ts';
import { hearSoundFile } from './soundFile.ts';

const VOICES = new URL('../../../public/voice/', import.meta.url);
const CUES = 200;
const SEED = 9;
const LONG_SHARE = 0.75;
/** Clean, then the crowd this far below the voice. */
const SNRS_DB = [null, 10, 5] as const;

const percent = (part: number, of: number): string => `${((100 * part) / of).toFixed(1)} %`.padStart(8);

const rowOf = (heard: readonly Heard[]): string => {
  const words = heard.reduce((sum, { said }) => sum + said.length, 0);
  const wrong = heard.reduce((sum, { mistakes }) => sum + mistakes, 0);
  const turning = heard.filter(({ criticalWrong }) => criticalWrong !== null);
  return [
    percent(heard.filter(({ mistakes }) => mistakes > 0).length, heard.length),
    percent(wrong, words),
    percent(turning.filter(({ criticalWrong }) => criticalWrong === true).length, turning.length),
  ].join('   ');
};

const TALKING = ['awb', 'slt', 'kal16', 'rms'] as const;

const randomCues = (): readonly Cue[] => {
  const random = randomFrom(SEED);
  return Array.from({ length: CUES }, () => ({
    saying: cueAt(random),
    form: random() < LONG_SHARE ? 'long' : 'short',
  }));
};

/** `npm run bench:voice [-- --show]`: what a stock recogniser makes of the shipped voice in a crowd. */
const main = async (): Promise<void> => {
  const lacking = findRecogniser();
  if (lacking !== null) {
    console.error(lacking);
    process.exitCode = 1;
    return;
  }
  const noise = await crowd(TALKING, RECOGNISER_RATE_HZ, SEED);
  const grammar = grammarOf(english.words);
  const cues = randomCues();
  console.log(`${CUES} random calls; wrong in 100: calls with any word wrong, words, sign or verb or number`);
  for (const loudness of LOUDNESS) {
    const mp3 = readFileSync(fileURLToPath(new URL(english.pack.variants[loudness].file, VOICES)));
    const sprite = resample(decode(mp3), RECOGNISER_RATE_HZ).samples;
    const room = {
      voice: voiceOf(english.pack, english.words),
      words: english.words,
      pack: english.pack,
      sprite,
      noise,
      grammar,
    };
    for (const snrDb of SNRS_DB) {
      const heard = hear(cues, room, snrDb, SEED);
      const name = snrDb === null ? 'clean' : `+${snrDb} dB`;
      console.log(`${loudness.padEnd(8)}${name.padEnd(8)}${rowOf(heard)}`);
      if (!process.argv.includes('--show')) continue;
      for (const one of heard.filter(({ mistakes }) => mistakes > 0))
        console.log(`    said ${one.said.join(' ')}\n    heard ${one.heard.join(' ')}`);
    }
  }
  const file = hearSoundFile(grammar, noise);
  const misheard = file.filter(({ wrong }) => wrong > 0);
  console.log(`the demo race's sound file, clean: ${misheard.length} of ${file.length} calls misheard`);
  for (const { said, heard } of misheard)
    console.log(`    said ${said.join(' ')}\n    heard ${heard.join(' ')}`);
};

await main();
