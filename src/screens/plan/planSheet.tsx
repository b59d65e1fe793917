import type { DistanceUnit } from '../../core/units/units.ts';
import type { PlanRow, PlanSheet } from '../../session/planCurve.ts';
import { distance, pace, span, unitName } from '../format.ts';

const rowName = (row: PlanRow, unit: DistanceUnit): string => {
  const decimals = row.what === 'board' ? 0 : 2;
  return String(Number(distance(row.atM, unit, decimals)));
};

/** The plan as a table: what the clock should show where. */
export const PlanTable = ({ sheet, unit }: { sheet: PlanSheet; unit: DistanceUnit }) => (
  <table class="plan-table">
    <caption class="unseen">Planned time at each board and checkpoint</caption>
    <thead>
      <tr>
        <th scope="col">{unitName(unit)}</th>
        <th scope="col">Clock</th>
        <th scope="col">Pace</th>
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
        </tr>
      ))}
    </tbody>
  </table>
);
