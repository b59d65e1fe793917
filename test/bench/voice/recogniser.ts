import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Sound, writeWav } from '../../../src/voicepack/wav.ts';
import { plainWords } from './grammar.ts';

const MODEL = '/usr/share/pocketsphinx/model/en-us';
const PACKAGES = ['pocketsphinx', 'pocketsphinx-en-us'];
export const RECOGNISER_RATE_HZ = 16000;
const WAV_HEADER_BYTES = 44;
/**
 * How unlikely a guess may be and still be followed. With the recogniser's own 1e-48 and 7e-29 it drops the right guess
 * early in long calls and then hears nothing, or a short one: its search's fault, not the voice's (of 200 calls at +5 dB
 * it lost four so; with these, none).
 */
const BEAMS = ['-beam', '1e-80', '-pbeam', '1e-80', '-wbeam', '1e-60'];

const present = (): boolean =>
  existsSync(`${MODEL}/en-us/mdef`) &&
  spawnSync('pocketsphinx_batch', [], { stdio: 'ignore' }).error === undefined;

/** Finds the recogniser; as root on Debian installs it; else says what to install. */
export const findRecogniser = (): string | null => {
  if (present()) return null;
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    spawnSync('apt-get', ['update', '-qq'], { stdio: 'ignore' });
    spawnSync('apt-get', ['install', '-y', '-qq', ...PACKAGES], { stdio: 'ignore' });
  }
  return present()
    ? null
    : `bench:voice needs the recogniser pocketsphinx: apt-get install ${PACKAGES.join(' ')}`;
};

/** The dictionary's lines for the words of the grammar. */
const dictionaryFor = (words: ReadonlySet<string>): string =>
  readFileSync(`${MODEL}/cmudict-en-us.dict`, 'utf8')
    .split('\n')
    .filter((line) => words.has(line.replace(/(\(\d+\))? .*/, '')))
    .join('\n');

/** What the recogniser heard in each sound, as plain words, in the order given. */
export const recognise = (sounds: readonly Sound[], grammar: string): readonly (readonly string[])[] => {
  const folder = mkdtempSync(join(tmpdir(), 'soundline-ear-'));
  const at = (name: string): string => join(folder, name);
  const names = sounds.map((_, i) => `s${i}`);
  for (const [i, sound] of sounds.entries()) writeFileSync(at(`s${i}.wav`), writeWav(sound));
  writeFileSync(at('ctl'), `${names.join('\n')}\n`);
  writeFileSync(at('fsg'), grammar);
  writeFileSync(at('dict'), `${dictionaryFor(new Set(grammar.split(/\s+/)))}\n`);
  execFileSync(
    'pocketsphinx_batch',
    [
      ...[
        '-hmm',
        `${MODEL}/en-us`,
        '-dict',
        at('dict'),
        '-fsg',
        at('fsg'),
        '-ctl',
        at('ctl'),
        '-hyp',
        at('hyp'),
      ],
      ...['-cepdir', folder, '-cepext', '.wav', '-adcin', 'yes', '-adchdr', String(WAV_HEADER_BYTES)],
      ...BEAMS,
      ...['-samprate', String(RECOGNISER_RATE_HZ), '-logfn', at('log'), '-seed', '1'],
    ],
    { stdio: 'ignore' },
  );
  const heard = readFileSync(at('hyp'), 'utf8')
    .trimEnd()
    .split('\n')
    .map((line) => plainWords(line.replace(/\(s\d+ -?\d+\)\s*$/, '')));
  rmSync(folder, { recursive: true });
  return heard;
};
