/**
 * `npm run bench:voice [-- calls|clips|plain|level|file] [--show] [--write]`: what a stock recogniser makes of the shipped voice
 * in a crowd. `--show` prints what was misheard, `--write` puts the tables into DEVELOPERS.md.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import type { Loudness } from '../../../src/voice/packs/pack.ts';
import { voiceOf } from '../../../src/voice/utter.ts';
import { withTables } from '../table.ts';
import { printCalls } from './calls.ts';
import { printClips } from './clips.ts';
import { grammarOf } from './grammar.ts';
import type { Room } from './hear.ts';
import { printLevels } from './level.ts';
import { crowd } from './noise.ts';
import { printPlain } from './plain.ts';
import { findRecogniser, RECOGNISER_RATE_HZ } from './recogniser.ts';
import { printSoundFile } from './soundFile.ts';
import { shippedSprite } from './sprite.ts';

const CALLS = 200;
const SEED = 9;
const TALKING = ['awb', 'slt', 'kal16', 'rms'] as const;
const PAGE = 'DEVELOPERS.md';
const SECTIONS = ['calls', 'clips', 'plain', 'level', 'file'] as const;

const main = async (): Promise<void> => {
  const lacking = findRecogniser();
  if (lacking !== null) {
    console.error(lacking);
    process.exitCode = 1;
    return;
  }
  const wanted = SECTIONS.filter((name) => process.argv.includes(name));
  const isWanted = (name: (typeof SECTIONS)[number]): boolean => wanted.length === 0 || wanted.includes(name);
  const noise = await crowd(TALKING, RECOGNISER_RATE_HZ, SEED);
  const grammar = isWanted('calls') || isWanted('file') ? grammarOf(english.words) : '';
  const roomOf = (loudness: Loudness): Room => ({
    voice: voiceOf(english.pack, english.words),
    words: english.words,
    pack: english.pack,
    sprite: shippedSprite(english.pack, loudness),
    noise,
    grammar,
  });
  if (isWanted('level')) printLevels(english.pack);
  if (isWanted('plain')) await printPlain(roomOf('normal'), SEED);
  if (isWanted('clips')) printClips(roomOf, SEED);
  if (isWanted('calls')) printCalls(roomOf, CALLS, SEED, process.argv.includes('--show'));
  if (isWanted('file')) printSoundFile(grammar, noise);
  if (process.argv.includes('--write')) writeFileSync(PAGE, withTables(readFileSync(PAGE, 'utf8'), 'voice'));
};

await main();
