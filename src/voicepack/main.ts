import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Speaking } from '../languages/speaking.ts';
import type { Words } from '../voice/words/words.ts';
import { type Built, buildPack, factsOf, packText } from './build.ts';
import { openEspeak } from './espeak.ts';
import { espeakClip } from './espeakClips.ts';
import { ESPEAK_LOUD } from './espeakMastering.ts';
import { LOUD, NORMAL } from './master.ts';
import { rolesOf } from './roles.ts';
import { clipsOf } from './walk.ts';
import type { Sound } from './wav.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const LANGUAGES = `${ROOT}src/languages`;

/** A language is a folder with words in it. */
const languages = (): readonly string[] =>
  readdirSync(LANGUAGES).filter((tag) => existsSync(`${LANGUAGES}/${tag}/words/say.ts`));

const wordsIn = async (tag: string): Promise<Words> =>
  ((await import(`${LANGUAGES}/${tag}/words/say.ts`)) as { words: Words }).words;

/** By eSpeak NG where the folder says how to speak; English is Flite's, which is understood better. */
const record = async (tag: string): Promise<Built> => {
  const words = await wordsIn(tag);
  if (!existsSync(`${LANGUAGES}/${tag}/speaking.ts`)) {
    const { recordEnglish } = await import('./fliteClips.ts');
    return buildPack(
      { language: tag, voice: 'Flite rms', isStored: true, normal: NORMAL, loud: LOUD },
      await recordEnglish(clipsOf(words)),
    );
  }
  const { speaking } = (await import(`${LANGUAGES}/${tag}/speaking.ts`)) as { speaking: Speaking };
  const speak = await openEspeak(speaking);
  const clips = new Map<string, Sound>();
  for (const [clip, role] of rolesOf(words)) clips.set(clip, espeakClip(speak, clip, role, speaking));
  return buildPack(
    { language: tag, voice: speaking.name, isStored: false, normal: NORMAL, loud: ESPEAK_LOUD },
    clips,
  );
};

const write = (tag: string, { pack, files }: Built): void => {
  mkdirSync(`${ROOT}public/voice`, { recursive: true });
  for (const name of readdirSync(`${ROOT}public/voice`))
    if (name.startsWith(`${tag}-`) || name === `${tag}.mp3`) rmSync(`${ROOT}public/voice/${name}`);
  for (const [name, mp3] of files) writeFileSync(`${ROOT}public/voice/${name}`, mp3);
  writeFileSync(`${LANGUAGES}/${tag}/pack.json`, packText(pack));
};

/** Names of the files that are not, byte for byte, what was built. */
const differing = (tag: string, { pack, files }: Built): readonly string[] => {
  const isSame = (path: string, bytes: Buffer): boolean =>
    existsSync(path) && readFileSync(path).equals(bytes);
  const sounds = [...files].filter(([name, mp3]) => !isSame(`${ROOT}public/voice/${name}`, mp3));
  const manifest = isSame(`${LANGUAGES}/${tag}/pack.json`, Buffer.from(packText(pack)));
  return [...sounds.map(([name]) => name), ...(manifest ? [] : [`${tag}/pack.json`])];
};

/**
 * `npm run voice`: makes every clip that the words of each language need, masters them and writes the MP3 files and the
 * manifests. `-- de fr` for some languages; `-- --check` builds and compares, and writes nothing.
 */
const main = async (args: readonly string[]): Promise<void> => {
  const asked = args.filter((arg) => !arg.startsWith('--'));
  const here = languages();
  const unknown = asked.filter((tag) => !here.includes(tag));
  if (unknown.length > 0) throw new Error(`no language ${unknown.join(', ')}; there are ${here.join(', ')}`);
  for (const tag of asked.length > 0 ? asked : here) {
    const built = await record(tag);
    for (const fact of factsOf(built)) console.log(fact);
    if (args.includes('--check')) {
      const other = differing(tag, built);
      console.log(other.length === 0 ? `${tag}: the same bytes` : `${tag}: differs in ${other.join(', ')}`);
      if (other.length > 0) process.exitCode = 1;
    } else write(tag, built);
  }
};

await main(process.argv.slice(2));
