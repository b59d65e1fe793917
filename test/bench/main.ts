/**
 * The bench: races whose truth is known, run through the engine as a phone would, scored, and printed as tables.
 * `npm run bench` takes a few minutes; `-- --quick` less, with fewer races; `-- --write` puts the tables into DEVELOPERS.md.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { printAccuracy } from './accuracy.ts';
import { printAloud } from './aloud.ts';
import { printCost } from './cost.ts';
import { printFiles } from './files.ts';
import { printGoals } from './goals.ts';
import { printHills } from './hills.ts';
import { printPacing } from './pacing.ts';
import { printPage } from './page.ts';
import { printPractice } from './practice.ts';
import { printPrepare } from './prepare.ts';
import { printReview } from './review.ts';
import { withTables } from './table.ts';
import { printTiming } from './timing.ts';

const PAGE = 'DEVELOPERS.md';

const quick = process.argv.includes('--quick');
const seeds = (n: number): number[] => Array.from({ length: n }, (_, i) => i + 1);
const sections = {
  accuracy: () => printAccuracy(seeds(quick ? 1 : 3)),
  files: () => printFiles(seeds(quick ? 8 : 40)),
  hills: () => printHills(seeds(quick ? 2 : 6)),
  goals: () => printGoals(quick ? 15 : 50),
  pacing: () => printPacing(seeds(quick ? 4 : 12)),
  practice: () => printPractice(seeds(quick ? 4 : 12)),
  review: () => printReview(),
  cost: () => printCost(),
  prepare: () => printPrepare(),
  aloud: () => printAloud(),
  // Takes twenty minutes, and a machine without other work for the times by the clock.
  page: () => printPage(quick),
  timing: () => printTiming(quick),
};

const wanted = process.argv.slice(2).filter((arg) => arg in sections);
const run = async (): Promise<void> => {
  for (const [name, print] of Object.entries(sections))
    if (wanted.length === 0 || wanted.includes(name)) await print();
  if (process.argv.includes('--write')) writeFileSync(PAGE, withTables(readFileSync(PAGE, 'utf8')));
};

run().catch((error: unknown) => {
  console.error(error);
  process.exitCode = 1;
});
