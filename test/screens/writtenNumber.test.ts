import { afterEach, expect, test } from 'vitest';
import { readIn } from '../../src/languages/text.ts';
import { writtenNumber } from '../../src/screens/form/writtenNumber.ts';
import { numberOf } from '../../src/session/plan/planTexts.ts';

afterEach(() => readIn('en', {}));

test.each(['de', 'fr', 'es', 'it', 'pt'])(
  'an input in %s shows a number with a comma, and it is read again',
  (language) => {
    readIn(language, {});
    expect(writtenNumber('21.0975')).toBe('21,0975');
    expect(numberOf(writtenNumber('-0.5'))).toBe(-0.5);
  },
);

test('in English, and where there is nothing to write anew, the text stays', () => {
  expect(writtenNumber('21.0975')).toBe('21.0975');
  readIn('de', {});
  for (const text of ['', '10', '5.', '1.2.3', '5.5 10', '1:44:00']) expect(writtenNumber(text)).toBe(text);
});
