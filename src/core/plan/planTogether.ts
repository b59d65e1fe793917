import { message } from '../units/message.ts';
import { type DoorError, ok, type Result } from '../units/result.ts';
import { M_PER_KM } from '../units/units.ts';
import type { PlanFields } from './planFields.ts';
import { refuse } from './shape.ts';

/** The quickest anybody ran 100 m is a mean of 10.4 m/s; above this a goal or a leg is a slip of the hand. */
const QUICKEST_MPS = 12;
const QUICKEST_S_PER_KM = M_PER_KM / QUICKEST_MPS;

type Checked = Result<unknown, DoorError>;
type Check = () => Checked;
const fine: Checked = ok(null);

const firstBreach = (checks: readonly Check[]): Checked => {
  for (const check of checks) {
    const got = check();
    if (!got.ok) return got;
  }
  return fine;
};

const runnable = (name: string, paceSPerKm: number, found: number): Checked =>
  paceSPerKm >= QUICKEST_S_PER_KM
    ? fine
    : refuse(name, message('a pace that a human can run (slower than {n} m/s)', { n: QUICKEST_MPS }), found);

const onCourse = (f: PlanFields, name: string, atM: number): Checked =>
  atM <= f.distanceM
    ? fine
    : refuse(name, message('a place on the course of {n} m', { n: f.distanceM }), atM);

/** Times at places must grow with the places: nobody runs back in time. */
const growing = (
  name: string,
  rows: readonly { readonly atM: number; readonly timeS: number }[],
): readonly Check[] =>
  rows.slice(1).map((row, i) => () => {
    const before = rows[i];
    return before === undefined || (row.atM > before.atM && row.timeS > before.timeS)
      ? fine
      : refuse(`${name}[${i + 1}]`, 'a later place and a later time than the row before', row.atM);
  });

const legs = (f: PlanFields): readonly Check[] => {
  const { distanceM, goalS, opening, push } = f;
  const paceSPerKm = (goalS / distanceM) * M_PER_KM;
  const untilM = opening?.untilM ?? 0;
  const openingWin = opening?.quickerSPerKm ?? 0;
  const pushWin = push?.quickerSPerKm ?? 0;
  // Seconds a kilometre that a spent opening gives back (or, begun slower, asks for) on the rest of the way.
  const restM = distanceM - untilM;
  const backSPerKm = f.openingWins === 'spent' && restM > 0 ? (openingWin * untilM) / restM : 0;
  return [
    () => runnable('goalS', paceSPerKm, goalS),
    () => onCourse(f, 'opening.untilM', untilM),
    () => runnable('opening.quickerSPerKm', paceSPerKm - openingWin, openingWin),
    () => onCourse(f, 'push.fromM', push?.fromM ?? 0),
    () =>
      push === null || push.fromM >= untilM
        ? fine
        : refuse(
            'push.fromM',
            message('a place after the opening, which ends at {n} m', { n: untilM }),
            push.fromM,
          ),
    () => (pushWin >= 0 ? fine : refuse('push.quickerSPerKm', '0 or more seconds per kilometre', pushWin)),
    () => runnable('push.quickerSPerKm', paceSPerKm - pushWin, pushWin),
    () => runnable('openingWins', paceSPerKm + Math.min(0, backSPerKm) - Math.max(0, pushWin), openingWin),
  ];
};

/** A second goal keeps the legs, so it must be runnable with them too. */
const secondGoal = (f: PlanFields): readonly Check[] => {
  const goalS = f.secondGoal?.goalS;
  if (goalS === undefined) return [];
  const paceSPerKm = (goalS / f.distanceM) * M_PER_KM;
  const most = Math.max(0, f.opening?.quickerSPerKm ?? 0, f.push?.quickerSPerKm ?? 0);
  return [() => runnable('secondGoal.goalS', paceSPerKm - most, goalS)];
};

const places = (f: PlanFields): readonly Check[] => [
  ...(f.checkpointsM ?? []).map((atM, i) => () => onCourse(f, `checkpointsM[${i}]`, atM)),
  ...f.stations.map((s, i) => () => onCourse(f, `stations[${i}].atM`, s.atM)),
  ...f.fuel.map((s, i) => () => onCourse(f, `fuel[${i}].atM`, s.atM)),
  ...(f.cutOffs ?? []).map((c, i) => () => onCourse(f, `cutOffs[${i}].atM`, c.atM)),
  ...(f.rival?.splits ?? []).map((s, i) => () => onCourse(f, `rival.splits[${i}].atM`, s.atM)),
  ...(f.tunnels ?? []).flatMap((t, i) => [
    () => onCourse(f, `tunnels[${i}].toM`, t.toM),
    () =>
      t.toM > t.fromM
        ? fine
        : refuse(
            `tunnels[${i}].toM`,
            message("a place after the tunnel's mouth at {n} m", { n: t.fromM }),
            t.toM,
          ),
  ]),
  ...(f.wrongBoards ?? []).flatMap((b, i) => [
    () => onCourse(f, `wrongBoards[${i}].saysM`, b.saysM),
    () => onCourse(f, `wrongBoards[${i}].standsAtM`, b.standsAtM ?? 0),
  ]),
];

/** What the parts of a plan owe each other; the first breach is the error. */
export const checkTogether = (f: PlanFields): Checked =>
  firstBreach([
    ...legs(f),
    ...places(f),
    ...secondGoal(f),
    ...growing('rival.splits', f.rival?.splits ?? []),
    ...growing('cutOffs', f.cutOffs ?? []),
    () =>
      f.rival !== null && f.rival.splits.at(-1)?.atM !== f.distanceM
        ? refuse(
            'rival.splits',
            message('a last row at the finish, {n} m', { n: f.distanceM }),
            f.rival.splits.at(-1)?.atM,
          )
        : fine,
  ]);
