import type { LinePoint } from '../core/course/line.ts';
import { type Message, message } from '../core/units/message.ts';
import { err, ok, type Result } from '../core/units/result.ts';
import { crc32, deflate, fromBase64Url, inflate, toBase64Url } from './bytes.ts';
import { type PackedLine, packLine, simplified, unpackLine } from './line.ts';

/**
 * A plan as letters that a link keeps: `1.<length>.<check>.<body>`. The body is DEFLATE of JSON in base64url, its length in
 * characters and the CRC-32 of its bytes stand before it in base 36, so that a code that was cut off or changed says so.
 */
const VERSION = '1';
/** A plan with its course as JSON; longer is no plan. */
const MOST_BYTES = 4_000_000;
const MOST_CHARS = 1_000_000;

/** A plan as its own reader takes it, and its course. */
export interface SharedPlan {
  readonly plan: Readonly<Record<string, unknown>>;
  readonly course: readonly LinePoint[] | null;
}

export interface PlanCode {
  readonly text: string;
  /** How far the course may be off the one that was given, metres; 0 where it is the same. */
  readonly courseOffM: number;
}

interface Body {
  readonly plan: SharedPlan['plan'];
  readonly line?: PackedLine;
}

const write = async (body: Body): Promise<string> => {
  const bytes = await deflate(new TextEncoder().encode(JSON.stringify(body)));
  const text = toBase64Url(bytes);
  return [VERSION, text.length.toString(36), crc32(bytes).toString(36), text].join('.');
};

const EXACT_STEPS = 1e6;

/** The whole plan, the course to the decimetre. */
export const encodePlan = async ({ plan, course }: SharedPlan): Promise<PlanCode> => ({
  text: await write({ plan, ...(course === null ? {} : { line: packLine(course, EXACT_STEPS) }) }),
  courseOffM: 0,
});

/** Tried in turn until it fits; a road is some ten metres wide. */
const SIMPLER_M = [1, 2, 3, 5, 8, 12, 20] as const;
/** Ten thousandths of a minute: about a metre. */
const COARSE_STEPS = 1e5;

/** The plan in at most so many characters, its course drawn with fewer points; null where even that is too long. */
export const encodeWithin = async (shared: SharedPlan, mostChars: number): Promise<PlanCode | null> => {
  const exact = await encodePlan(shared);
  if (exact.text.length <= mostChars) return exact;
  const { plan, course } = shared;
  if (course === null) return null;
  for (const withinM of SIMPLER_M) {
    const line = packLine(simplified(course, withinM), COARSE_STEPS);
    const text = await write({ plan, line });
    // The coarser steps are off by up to 0.8 m besides.
    if (text.length <= mostChars) return { text, courseOffM: withinM + 1 };
  }
  return null;
};

const isObject = (x: unknown): x is Readonly<Record<string, unknown>> =>
  typeof x === 'object' && x !== null && !Array.isArray(x);
const isWholes = (x: unknown): x is number[] => Array.isArray(x) && x.every((v) => Number.isSafeInteger(v));

const lineOf = (x: unknown): PackedLine | null | 'bad' => {
  if (x === undefined) return null;
  if (!isObject(x) || !Number.isSafeInteger(x['steps']) || Number(x['steps']) < 1) return 'bad';
  const { steps, places, heights } = x as { steps: number; places: unknown; heights: unknown };
  if (!isWholes(places) || places.length % 2 !== 0) return 'bad';
  if (heights !== null && (!isWholes(heights) || heights.length * 2 !== places.length)) return 'bad';
  return { steps, places, heights };
};

const DAMAGED = message(
  'This code is damaged: some of its letters have changed. Copy or photograph it again.',
);
const NO_PLAN = message('This is no plan of Soundline.');

/** A code to a plan, or a sentence that says what is wrong with it. Never throws. */
export const decodePlan = async (text: string): Promise<Result<SharedPlan, Message>> => {
  if (text.length > MOST_CHARS) return err(NO_PLAN);
  const [version, length, check, body = '', ...rest] = text.trim().split('.');
  if (version === undefined || !/^\d{1,3}$/.test(version) || rest.length > 0) return err(NO_PLAN);
  if (version !== VERSION)
    return err(
      message('This plan is of version {version}; this page reads version {own}. Update Soundline.', {
        version,
        own: VERSION,
      }),
    );
  const chars = Number.parseInt(length ?? '', 36);
  if (!Number.isFinite(chars) || check === undefined)
    return err(message('This code has been cut off right at its beginning. Copy all of it.'));
  if (body.length < chars)
    return err(
      message('This code has been cut off: {here} of its {all} characters are here. Copy all of it.', {
        here: body.length,
        all: chars,
      }),
    );
  const bytes = fromBase64Url(body);
  if (bytes === null || body.length > chars || crc32(bytes).toString(36) !== check) return err(DAMAGED);
  try {
    const found: unknown = JSON.parse(
      new TextDecoder('utf-8', { fatal: true }).decode(await inflate(bytes, MOST_BYTES)),
    );
    if (!isObject(found) || !isObject(found['plan'])) return err(NO_PLAN);
    const line = lineOf(found['line']);
    if (line === 'bad') return err(DAMAGED);
    return ok({ plan: found['plan'], course: line === null ? null : unpackLine(line) });
  } catch {
    return err(DAMAGED);
  }
};

const MARK = '#/share/';

/** The code in a link, or the code itself where somebody pasted that. */
export const codeIn = (text: string): string => {
  const at = text.indexOf(MARK);
  return at < 0 ? text.trim() : text.slice(at + MARK.length).trim();
};

export const linkOf = (origin: string, code: string): string => `${origin}/${MARK}${code}`;
