import { existsSync, readdirSync } from 'node:fs';
import { merged } from '../../src/languages/merged.ts';
import { allTexts } from './allTexts.ts';

/**
 * For translators: all English texts of the page as JSON; with the tag of a language, only those that its catalogue lacks
 * (`npm run texts -- de`).
 */
const [tag] = process.argv.slice(2);
const folder = `src/languages/${tag}/screen`;
const parts = tag !== undefined && existsSync(folder) ? readdirSync(folder) : [];
const modules = await Promise.all(parts.map((part) => import(`../../${folder}/${part}`)));
const there = merged(Object.fromEntries(modules.map((module, i) => [String(i), module])));
const texts = allTexts().filter(({ text }) => !(text in there));
process.stdout.write(`${JSON.stringify(texts, null, 2)}\n`);
