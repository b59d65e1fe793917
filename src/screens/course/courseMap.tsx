import type { RacePlan } from '../../core/plan/racePlan.ts';
import { boardsM } from '../../core/plan/splits.ts';
import { metresPer } from '../../core/units/units.ts';
import { t } from '../../languages/text.ts';
import type { CourseView } from '../../session/course/courseView.ts';
import { useWidth } from '../parts/width.ts';

interface Props {
  readonly view: CourseView;
  readonly plan: RacePlan;
  readonly pickedM: number;
  readonly onPick: (eastM: number, northM: number) => void;
}

const MARGIN = 26;
const MOST_HEIGHT = 520;
const LEAST_HEIGHT = 200;
/** One arrow a fifth of the way at least, and no nearer than this on the screen. */
const ARROWS = 9;
/** Numbers of boards need room: one that would lie on another is left out. */
const LABEL_ROOM_PX = 17;

/** The course as a line on paper: no streets, no network. North is up. */
export const CourseMap = ({ view, plan, pickedM, onPick }: Props) => {
  const [ref, width] = useWidth<HTMLElement>();
  const { west, east, south, north } = view.bounds;
  const [acrossM, upM] = [Math.max(1, east - west), Math.max(1, north - south)];
  const height = Math.min(
    MOST_HEIGHT,
    Math.max(LEAST_HEIGHT, ((width - 2 * MARGIN) * upM) / acrossM + 2 * MARGIN),
  );
  const scale = Math.min((width - 2 * MARGIN) / acrossM, (height - 2 * MARGIN) / upM);
  const left = (width - scale * acrossM) / 2;
  const top = (height - scale * upM) / 2;
  const x = (m: number): number => left + scale * (m - west);
  const y = (m: number): number => top + scale * (north - m);
  const xy = (atM: number): { x: number; y: number } => {
    const p = view.at(atM);
    return { x: x(p.eastM), y: y(p.northM) };
  };
  const stretch = (fromM: number, toM: number): string =>
    Array.from({ length: 25 }, (_, i) => xy(fromM + ((toM - fromM) * i) / 24))
      .map((p) => `${p.x.toFixed(1)} ${p.y.toFixed(1)}`)
      .join('L');
  const boards = boardsM(plan);
  const labelled: { readonly x: number; readonly y: number }[] = [];
  const hasRoom = (p: { readonly x: number; readonly y: number }): boolean => {
    const free = labelled.every((l) => Math.hypot(l.x - p.x, l.y - p.y) > LABEL_ROOM_PX);
    if (free) labelled.push(p);
    return free;
  };
  const turn = (atM: number): number => (-view.headingAt(atM) * 180) / Math.PI;
  const picked = xy(pickedM);
  return (
    <figure class="chart map" ref={ref}>
      <figcaption>
        <Key />
      </figcaption>
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: the slider below picks the same places by keyboard. */}
      <svg
        width={width}
        height={height}
        role="img"
        aria-label={t('The course, {name}, drawn as a line', { name: plan.name })}
        onClick={(event) => {
          const box = event.currentTarget.getBoundingClientRect();
          onPick(
            west + (event.clientX - box.left - left) / scale,
            north - (event.clientY - box.top - top) / scale,
          );
        }}
      >
        <path
          class="map-line"
          d={`M${view.line.map((p) => `${x(p.eastM).toFixed(1)} ${y(p.northM).toFixed(1)}`).join('L')}`}
        />
        {plan.tunnels?.map((t) => (
          <path key={t.fromM} class="map-tunnel" d={`M${stretch(t.fromM, t.toM)}`} />
        ))}
        {Array.from({ length: ARROWS }, (_, i) => ((i + 0.5) / ARROWS) * plan.distanceM).map((m) => (
          <path
            key={m}
            class="map-arrow"
            d="M-5 -5L5 0L-5 5"
            transform={`translate(${xy(m).x.toFixed(1)} ${xy(m).y.toFixed(1)}) rotate(${turn(m).toFixed(0)})`}
          />
        ))}
        {boards.map((m, i) => {
          const p = xy(m);
          const wrong = plan.wrongBoards?.some((b) => Math.abs(b.saysM - m) < metresPer(plan.unit) / 2);
          return (
            <g key={m} class={wrong ? 'map-board map-wrong' : 'map-board'}>
              <circle cx={p.x} cy={p.y} r="2.5" />
              {hasRoom(p) && (
                <text x={p.x + 6} y={p.y - 5}>
                  {i + 1}
                  {wrong && '?'}
                </text>
              )}
            </g>
          );
        })}
        {plan.stations.map((s) => (
          <circle key={s.atM} class="station-mark" cx={xy(s.atM).x} cy={xy(s.atM).y} r="6" />
        ))}
        {plan.fuel.map((f) => (
          <path
            key={f.atM}
            class="fuel-mark"
            d="M0 -8l6 8-6 8-6-8z"
            transform={`translate(${xy(f.atM).x} ${xy(f.atM).y})`}
          />
        ))}
        <path
          class="map-finish"
          d="M-6 -6h12v12h-12z"
          transform={`translate(${xy(plan.distanceM).x} ${xy(plan.distanceM).y})`}
        />
        <path
          class="map-start"
          d="M-7 -8L9 0L-7 8z"
          transform={`translate(${xy(0).x} ${xy(0).y}) rotate(${turn(0).toFixed(0)})`}
        />
        <circle class="map-picked" cx={picked.x} cy={picked.y} r="10" />
      </svg>
    </figure>
  );
};

const Key = () => (
  <span class="map-key">
    <span data-mark="start">{t('start||place')}</span>
    <span data-mark="finish">{t('finish||place')}</span>
    <span data-mark="station">{t('station')}</span>
    <span data-mark="fuel">{t('what you carry||a mark')}</span>
    <span data-mark="tunnel">{t('tunnel')}</span>
  </span>
);
