import type { RacePlan } from '../../core/plan/racePlan.ts';
import type { DistanceUnit } from '../../core/units/units.ts';
import { t } from '../../languages/text.ts';
import type { CutOffRow, PlanRow, PlanSheet } from '../../session/plan/planCurve.ts';
import { distance, pace, shortDistance, span, unitName } from '../format.ts';

const rowName = (row: PlanRow, unit: DistanceUnit): string =>
  shortDistance(row.atM, unit, row.what === 'board' ? 0 : 2);

const gapText = (gapS: number): string => {
  const whole = Math.round(Math.abs(gapS));
  if (whole === 0) return t('level||no gap');
  return gapS > 0 ? t('{time} ahead', { time: span(whole) }) : t('{time} behind', { time: span(whole) });
};

/** The plan as a table: what the clock should show where, for either goal, and the gap to the rival. */
export const PlanTable = ({ sheet, plan }: { sheet: PlanSheet; plan: RacePlan }) => {
  const { unit, secondGoal, rival } = plan;
  return (
    <div class="scroll-x">
      <table class="plan-table">
        <caption class="unseen">{t('Planned time at each board and checkpoint')}</caption>
        <thead>
          <tr>
            <th scope="col">{unitName(unit)}</th>
            <th scope="col">{t('Clock')}</th>
            <th scope="col">{t('Pace')}</th>
            {secondGoal && (
              <th scope="col">{secondGoal.kind === 'safe' ? t('Safe||goal') : t('Dream||goal')}</th>
            )}
            {rival && <th scope="col">{t('On {name}', { name: rival.name })}</th>}
          </tr>
        </thead>
        <tbody>
          {sheet.rows.map((row) => (
            <tr key={row.atM} data-what={row.what}>
              <th scope="row">
                {rowName(row, unit)}
                {row.what === 'finish' && <span class="row-note"> {t('finish||place')}</span>}
                {row.what === 'checkpoint' && (
                  <span class="row-mark">
                    <span class="unseen">{t('checkpoint')}</span>
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

const cutOffText = (c: CutOffRow, unit: DistanceUnit): string => {
  const values = {
    place: distance(c.atM, unit, 2),
    unit: unitName(unit),
    time: span(c.timeS),
    left: span(Math.abs(c.leftS)),
  };
  return c.leftS < 0
    ? t('{place} {unit} closes {time} after the gun: this plan comes {left} too late.', values)
    : t(
        '{place} {unit} closes {time} after the gun: {left} left, less your way from the gun to the line.',
        values,
      );
};

/** What is left against the race's own closing times. */
export const CutOffs = ({ sheet, unit }: { sheet: PlanSheet; unit: DistanceUnit }) =>
  sheet.cutOffs.length === 0 ? null : (
    <section aria-label={t('Cut-offs')}>
      <h2>{t('Cut-offs')}</h2>
      {sheet.cutOffs.map((c) => (
        <p key={c.atM} class={c.leftS < NARROW_S ? 'field-error' : ''}>
          {cutOffText(c, unit)}
        </p>
      ))}
    </section>
  );
