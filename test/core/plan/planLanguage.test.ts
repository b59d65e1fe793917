import fc from 'fast-check';
import { expect, test } from 'vitest';
import { languageOf, UNNAMED_LANGUAGE, withLanguage } from '../../../src/core/plan/planLanguage.ts';
import { withReceiver } from '../../../src/core/plan/planReceiver.ts';

const PLAN = '{"version":1,"name":"Ten"}';
const seen = { slowSdM: 2.6, lagS: 0.5, lagSdS: 0.4 };

test('a plan file says in which language its run was spoken, beside all that it said before', () => {
  const file = withLanguage(withReceiver(PLAN, seen), 'pt');
  expect(languageOf(file)).toBe('pt');
  expect(JSON.parse(file)).toMatchObject({ version: 1, name: 'Ten', receiver: seen });
});

test('a file from before there were languages is English, and English leaves a file as it is', () => {
  expect(languageOf(PLAN)).toBe(UNNAMED_LANGUAGE);
  expect(withLanguage(PLAN, 'en')).toBe(PLAN);
});

test.each(['', 'D', '../de', 'de/../fr', 'd'.repeat(99), '__proto__'])('%j is no language', (tag) => {
  expect(languageOf(JSON.stringify({ language: tag }))).toBe(UNNAMED_LANGUAGE);
});

test('whatever a file holds, there is a language, and it can name a folder', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.json(),
        fc.string().map((language) => JSON.stringify({ language })),
      ),
      (file) => {
        expect(languageOf(file)).toMatch(/^[a-z]{2,3}(-[A-Za-z0-9]+)*$/);
      },
    ),
  );
});
