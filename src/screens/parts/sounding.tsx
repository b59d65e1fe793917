import type { Drift } from '../../core/drift/drift.ts';
import { message, plural } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import { type Sounded, sounded } from '../format.ts';

const WORDS = {
  up: message('ahead'),
  down: message('behind'),
  even: message('on plan'),
  none: message('no reading'),
} as const;

/**
 * Drift as a sounding: the figure stands above the water line when ahead, below when behind, with a float or a lead on
 * the line. Place and shape carry the sign; colour only repeats it.
 */
export const Sounding = ({ drift }: { drift: Drift | null }) => {
  const sound = drift === null ? null : sounded(drift.aheadS);
  const side = sound?.side ?? 'none';
  const sdS = drift === null ? null : Math.max(1, Math.round(1.96 * drift.aheadSdS));
  return (
    <div class="sounding" data-side={side}>
      <div class="sounding-figure">
        <span class="figure" aria-hidden="true" style={{ '--len': String(sound?.figure.length ?? 1) }}>
          {sound?.figure ?? '–'}
        </span>
        <span class="sounding-word" aria-hidden="true">
          {t(WORDS[side])}
          {sdS !== null && <span class="sounding-sure"> ±{sdS} s</span>}
        </span>
        <span class="unseen">{spokenOf(sound, sdS)}</span>
      </div>
      <Waterline aheadS={drift?.aheadS ?? null} />
    </div>
  );
};

/** The same for those who hear the screen. */
const spokenOf = (sound: Sounded | null, sdS: number | null): string => {
  if (sound === null || sdS === null) return t('No reading yet');
  // Long drifts stand as minutes and seconds, of which there are many.
  const n = Number(sound.figure);
  const values = { seconds: sound.figure, sd: sdS };
  const count = Number.isNaN(n) ? 100 : n;
  switch (sound.side) {
    case 'even':
      return t('On plan, give or take {sd}', values);
    case 'up':
      return t(
        plural(
          count,
          '{seconds} second ahead, give or take {sd}',
          '{seconds} seconds ahead, give or take {sd}',
          values,
        ),
      );
    case 'down':
      return t(
        plural(
          count,
          '{seconds} second behind, give or take {sd}',
          '{seconds} seconds behind, give or take {sd}',
          values,
        ),
      );
  }
};

/** Depth marks on the rope, seconds. */
const MARKS_S = [2, 5, 10, 30, 60];
/** The rope is this long in the drawing at the last mark; water at 100. */
const ROPE = 74;
const WATER = 100;

/** Depth in the drawing: quick at first, so that two seconds and five can be told apart, slow later. */
const depth = (seconds: number): number =>
  ROPE * Math.min(1, Math.log1p(Math.abs(seconds)) / Math.log1p(MARKS_S.at(-1) ?? 1));

interface WaterlineProps {
  readonly aheadS: number | null;
  /** Drawn from near, for a small drift in a small place. */
  readonly near?: boolean;
}

/** The water line with a float above it or a lead below it, as high or as deep as the drift. */
export const Waterline = ({ aheadS, near = false }: WaterlineProps) => {
  const side = aheadS === null ? 'none' : sounded(aheadS).side;
  const sign = side === 'up' ? -1 : 1;
  const endY = side === 'up' || side === 'down' ? WATER + sign * depth(aheadS ?? 0) : WATER;
  return (
    <svg class="waterline" viewBox={near ? '0 45 40 110' : '0 0 40 200'} aria-hidden="true" data-side={side}>
      <path class="water-surface" d={`M0 ${WATER}H40`} />
      <path class="rope" d={side === 'up' ? `M20 ${WATER}V${endY}` : `M20 0V${endY}`} />
      {MARKS_S.map((s) => WATER + sign * depth(s))
        .filter((y) => (y - endY) * sign < -6)
        .map((y) => (
          <path key={y} class="rope-mark" d={`M12 ${y}H20`} />
        ))}
      {side === 'up' && <path class="float" d={`M20 ${endY - 18}l13 22H7z`} />}
      {side === 'down' && (
        <path class="lead" d={`M20 ${endY - 6}c8 11 12 17 12 24a12 12 0 0 1-24 0c0-7 4-13 12-24z`} />
      )}
      {side === 'even' && <circle class="level" cx="20" cy={WATER} r="10" />}
    </svg>
  );
};
