import { describe, expect, test } from 'vitest';
import { textsIn, textsOf } from '../support/texts.ts';

const bareOf = (source: string): readonly string[] =>
  textsOf('a.tsx', source).bare.map((line) => line.replace(/^a\.tsx:\d+ /, ''));

describe('the search for texts that go past the languages', () => {
  test.each([
    ['children', 'const a = <p>One way <b>back</b></p>', ['One way', 'back']],
    ['either branch', "const a = <p>{n > 1 ? 'many' : few}</p>", ['many']],
    ['what stands before an ||', "const a = <p>{n > 1 && 'many ways'}{'few' || x}</p>", ['many ways', 'few']],
    ['attributes that are read', '<p title="far" class="far away">{x}</p>', ['far']],
    ['templates in them', `<p aria-label={\`Board \${n}\`}>{x}</p>`, ['Board']],
    [
      'what goes to other components',
      `<Row words="Far away" add={\`of \${n} rows\`} />`,
      ['Far away', 'of rows'],
    ],
    [
      'a text said once for all',
      "const NAME = t('Plan'); const f = () => t('Plan');",
      ['t outside a function'],
    ],
    ['tables', "const NAMES = { plan: 'Plan', way: 'the way back' };", ['Plan', 'the way back']],
    ['states', "trouble.value = 'It could not be read.';", ['It could not be read.']],
    ['the title of the page', `document.title = \`\${name} by the clock\`;`, ['by the clock']],
    ['values of a text', "() => t('Next: {what}', { what: 'The pen' })", ['The pen']],
    [
      'sayers without a literal',
      `() => t(\`\${n} ways\`); message(text); plural(n, one, many)`,
      ['t without a literal', 'message without a literal', 'plural without literal forms'],
    ],
  ])('finds %s', (_, source, bare) => {
    expect([...bareOf(source)].sort()).toEqual([...bare].sort());
  });

  test('lets be what programs read', () => {
    expect(
      bareOf(`
        import x from 'Some thing';
        const a = <path class="one two" d={\`M\${x} 0H\${y}\`} transform={\`rotate(\${n})\`} key={\`the \${n}\`} />;
        if (kind === 'Two words') throw new Error('Not for people');
        type Kind = 'One thing';
        const at = table['One thing'];
        const b = <p>{n} km · {'±'}</p>;
      `),
    ).toEqual([]);
  });

  test('collects what goes through the languages, with the form for one', () => {
    const { said } = textsOf(
      'a.tsx',
      "t('One' + ' way'); rich('Way {x}', { x }); plural(n, 'one', 'many'); refuse(at, 'a way', x); err({ expected: 'a place' });",
    );
    expect(said.map(({ text, one }) => [text, one])).toEqual([
      ['One way', undefined],
      ['Way {x}', undefined],
      ['many', 'one'],
      ['a way', undefined],
      ['a place', undefined],
    ]);
  });

  test.each([
    ["t('Way {x}')", ['a.tsx:1 {x} Way {x}']],
    ["t('Way {x} {y}', { x })", ['a.tsx:1 {y} Way {x} {y}']],
    ["plural(n, 'one {x}', '{n} {x}', { x })", []],
    ["rich(plural(n, 'one {x}', '{n} {x}'), { x: 1 })", []],
    ["message('Way {x}')", []],
    ["message('Way {x}', { y })", ['a.tsx:1 {x} Way {x}']],
    ["t('Way {x}', values)", []],
    ["t('Way {x}', { ...values })", []],
  ])('finds places without a value in %s', (source, empty) => {
    expect(textsOf('a.tsx', source).empty).toEqual(empty);
  });
});

/** Where what people read is made. */
const SHOWN = ['src/main.tsx', 'src/screens', 'src/session', 'src/offline', 'src/share', 'src/core/prepare'];
/** The words of file formats, a name inside a file, and the place of an error, which refusal() puts into the language. */
const IN_FILES = [
  /^src\/core\/prepare\/day\/calendar\.ts:/,
  /^src\/session\/review\/reviewModel\.ts:\d+ Run$/,
  /^src\/session\/practice\/practiceCourseRead\.ts:\d+ the log$/,
];

test('every text on the screens goes through the languages', () => {
  const { bare } = textsIn(...SHOWN);
  expect(bare.filter((line) => !IN_FILES.some((pattern) => pattern.test(line)))).toEqual([]);
});

test('every place of a text has a value where that can be seen', () => {
  expect(textsIn('src').empty).toEqual([]);
});
