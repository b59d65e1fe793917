import type { RacePlan } from '../../core/plan/racePlan.ts';
import type { DistanceUnit } from '../../core/units/units.ts';
import type { PlanRow, PlanSheet } from '../../session/planCurve.ts';
import { distance, pace, span, unitName } from '../format.ts';

const rowName = (row: PlanRow, unit: DistanceUnit): string => {
  const decimals = row.what === 'board' ? 0 : 2;
  return String(Number(distance(row.atM, unit, decimals)));
};

const gapText = (gapS: number): string => {
  const whole = Math.round(Math.abs(gapS));
  if (whole === 0) return 'level';
  return `${span(whole)} ${gapS > 0 ? 'ahead' : 'behind'}`;
};

/** The plan as a table: what the clock should show where, for either goal, and the gap to the rival. */
export const PlanTable = ({ sheet, plan }: { sheet: PlanSheet; plan: RacePlan }) => {
  const { unit, secondGoal, rival } = plan;
  return (
    <div class="scroll-x">
      <table class="plan-table">
        <caption class="unseen">Planned time at each board and checkpoint</caption>
        <thead>
          <tr>
            <th scope="col">{unitName(unit)}</th>
            <th scope="col">Clock</th>
            <th scope="col">Pace</th>
            {secondGoal && <th scope="col">{secondGoal.kind === 'safe' ? 'Safe' : 'Dream'}</th>}
            {rival && <th scope="col">On {rival.name}</th>}
          </tr>
        </thead>
        <tbody>
          {sheet.rows.map((row) => (
            <tr key={row.atM} data-what={row.what}>
              <th scope="row">
                {rowName(row, unit)}
                {row.what === 'finish' && <span class="row-note"> finish</span>}
                {row.what === 'checkpoint' && (
                  <span class="row-mark">
                    <span class="unseen">checkpoint</span>
                  </span>
                )}
              </th>
              <td>{span(row.timeS)}</td>
              <td>{pace(row.paceSPerKm, unit)}</td>
              {row.secondS !== null && <td>{span(row.secondS)}</td>}
              {row.rivalGapS !== null && <td>{gapText(row.rivalGapS)}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};

/** A margin under this is lost by a shoelace and a toilet. */
const NARROW_S = 180;

/** What is left against the race's own closing times. */
export const CutOffs = ({ sheet, unit }: { sheet: PlanSheet; unit: DistanceUnit }) =>
  sheet.cutOffs.length === 0 ? null : (
    <section aria-label="Cut-offs">
      <h2>Cut-offs</h2>
      {sheet.cutOffs.map((c) => (
        <p key={c.atM} class={c.leftS < NARROW_S ? 'field-error' : ''}>
          {distance(c.atM, unit, 2)} {unitName(unit)} closes {span(c.timeS)} after the gun:{' '}
          {c.leftS < 0
            ? `this plan comes ${span(-c.leftS)} too late.`
            : `${span(c.leftS)} left, less your way from the gun to the line.`}
        </p>
      ))}
    </section>
  );
