import type { Drift } from '../../core/drift/drift.ts';
import { sounded } from '../format.ts';

const WORDS = { up: 'up', down: 'down', even: 'on plan', none: 'no reading' } as const;

/**
 * Drift as a sounding: the figure stands above the water line when ahead, below when behind, with a float or a lead on
 * the line. Place and shape carry the sign; colour only repeats it.
 */
export const Sounding = ({ drift }: { drift: Drift | null }) => {
  const sound = drift === null ? null : sounded(drift.aheadS);
  const side = sound?.side ?? 'none';
  const sdS = drift === null ? null : Math.max(1, Math.round(1.96 * drift.aheadSdS));
  const spoken =
    sound === null
      ? 'No reading yet'
      : side === 'even'
        ? 'On plan'
        : `${sound.figure} seconds ${WORDS[side]}`;
  return (
    <div class="sounding" data-side={side}>
      <div class="sounding-figure">
        <span class="figure" aria-hidden="true" style={{ '--len': String(sound?.figure.length ?? 1) }}>
          {sound?.figure ?? '–'}
        </span>
        <span class="sounding-word" aria-hidden="true">
          {WORDS[side]}
          {sdS !== null && <span class="sounding-sure"> ±{sdS} s</span>}
        </span>
        <span class="unseen">
          {spoken}
          {sdS !== null && `, give or take ${sdS}`}
        </span>
      </div>
      <Waterline side={side} />
    </div>
  );
};

const Waterline = ({ side }: { side: keyof typeof WORDS }) => (
  <svg class="waterline" viewBox="0 0 40 200" aria-hidden="true">
    <path class="rope" d={side === 'up' ? 'M20 40V100' : side === 'down' ? 'M20 0V150' : 'M20 0V100'} />
    {[20, 60, 140, 180].map((y) => (
      <path key={y} class="rope-mark" d={`M${y % 80 === 20 ? 8 : 12} ${y}H20`} />
    ))}
    {side === 'up' && <path class="float" d="M20 12L34 36H6Z" />}
    {side === 'down' && <path class="lead" d="M20 146c9 12 13 18 13 27a13 13 0 0 1-26 0c0-9 4-15 13-27z" />}
    {side === 'even' && <circle class="level" cx="20" cy="100" r="10" />}
  </svg>
);
