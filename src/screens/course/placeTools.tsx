import { useSignal } from '@preact/signals';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { ITEMS, OFFERS, type Offer, SUPPLY_NAMES } from '../../core/plan/supplies.ts';
import { metresPer } from '../../core/units/units.ts';
import { t } from '../../languages/text.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import { Remove } from '../form/remove.tsx';
import { Several } from '../form/several.tsx';
import { distance, unitName } from '../format.ts';
import { rich } from '../parts/rich.tsx';
import { type PlacedThing, placedThings } from './placedThings.ts';

interface Props {
  readonly model: PlanModel;
  readonly pickedM: number;
  readonly passesM: readonly number[];
  readonly onPick: (atM: number) => void;
}

const USUAL_OFFERS: readonly Offer[] = ['water'];

/** What can be put at the place that was pointed to. */
export const PlaceTools = ({ model, pickedM, passesM, onPick }: Props) => {
  const plan = model.plan.value;
  const atM = Math.round(pickedM);
  return (
    <>
      <h2>
        {rich('At {place} {unit}', {
          place: <span class="figure">{distance(atM, plan.unit, 2)}</span>,
          unit: unitName(plan.unit),
        })}
      </h2>
      <p class="note">
        {t('Point on the map or the profile, or move the slider; then put something there.')}
      </p>
      {passesM.length > 1 && (
        <p>
          {t('The course comes by here {n} times:', { n: passesM.length })}{' '}
          {passesM.map((m) => (
            <button
              key={m}
              type="button"
              class="small-button"
              aria-pressed={m === pickedM}
              onClick={() => onPick(m)}
            >
              {distance(m, plan.unit, 1)}
            </button>
          ))}
        </p>
      )}
      <PutHere plan={plan} atM={atM} put={model.change} />
      <Things things={placedThings(plan)} model={model} onPick={onPick} unit={plan.unit} />
    </>
  );
};

interface PutProps {
  readonly plan: RacePlan;
  readonly atM: number;
  readonly put: PlanModel['change'];
}

const PutHere = ({ plan, atM, put }: PutProps) => {
  const offers = useSignal(USUAL_OFFERS);
  return (
    <>
      <Several
        label={t('The station offers')}
        labelUnseen
        options={OFFERS}
        chosen={offers.value}
        textOf={(offer) => t(SUPPLY_NAMES[offer])}
        onChange={(chosen) => {
          offers.value = chosen;
        }}
      />
      <div class="buttons">
        <button
          type="button"
          disabled={offers.value.length === 0}
          onClick={() => put((p) => ({ ...p, stations: [...p.stations, { atM, offers: offers.value }] }))}
        >
          {t('Station here')}
        </button>
        {ITEMS.slice(0, 1).map((item) => (
          <button
            key={item}
            type="button"
            onClick={() => put((p) => ({ ...p, fuel: [...p.fuel, { item, atM }] }))}
          >
            {t('My {item} here', { item: SUPPLY_NAMES[item] })}
          </button>
        ))}
        <MarksHere plan={plan} atM={atM} put={put} />
        <TunnelHere plan={plan} atM={atM} put={put} />
      </div>
    </>
  );
};

/** What can stand on the way alone, not at its ends. */
const MarksHere = ({ plan, atM, put }: PutProps) => {
  const unitM = metresPer(plan.unit);
  const nearest = Math.max(1, Math.round(atM / unitM));
  const putBoard = (standsAtM: number | null): void =>
    put((p) => {
      const saysM = nearest * unitM;
      const others = (p.wrongBoards ?? []).filter((b) => b.saysM !== saysM);
      return { ...p, wrongBoards: [...others, { saysM, standsAtM }] };
    });
  const outside = atM <= 0 || atM >= plan.distanceM;
  return (
    <>
      <button
        type="button"
        disabled={outside}
        onClick={() => put((p) => ({ ...p, checkpointsM: [...p.checkpointsM, atM] }))}
      >
        {t('Checkpoint here')}
      </button>
      <button type="button" disabled={outside} onClick={() => putBoard(atM)}>
        {t('Board {n} stands here', { n: nearest })}
      </button>
      <button type="button" disabled={outside} onClick={() => putBoard(null)}>
        {t('Do not trust board {n}', { n: nearest })}
      </button>
    </>
  );
};

/** A tunnel is told by its two mouths, one after the other. */
const TunnelHere = ({ plan, atM, put }: PutProps) => {
  const mouthM = useSignal<number | null>(null);
  if (mouthM.value === null)
    return (
      <button
        type="button"
        onClick={() => {
          mouthM.value = atM;
        }}
      >
        {t('Tunnel from here')}
      </button>
    );
  const [fromM, toM] = [Math.min(atM, mouthM.value), Math.max(atM, mouthM.value)];
  return (
    <button
      type="button"
      disabled={fromM === toM}
      onClick={() => {
        put((p) => ({ ...p, tunnels: [...(p.tunnels ?? []), { fromM, toM }] }));
        mouthM.value = null;
      }}
    >
      {t('Tunnel from {place} to here', { place: distance(mouthM.value, plan.unit, 2) })}
    </button>
  );
};

const Things = ({
  things,
  model,
  onPick,
  unit,
}: {
  readonly things: readonly PlacedThing[];
  readonly model: PlanModel;
  readonly onPick: (atM: number) => void;
  readonly unit: RacePlan['unit'];
}) => (
  <table class="plan-table">
    <caption class="unseen">{t('What lies on the way')}</caption>
    <tbody>
      {things.map((thing) => (
        <tr key={thing.key}>
          <th scope="row">
            <button type="button" class="link-button figure" onClick={() => onPick(thing.atM)}>
              {distance(thing.atM, unit, 2)}
            </button>
          </th>
          <td>{t(thing.text)}</td>
          <td>
            <Remove
              label={t('Remove {what} at {place}', {
                what: thing.text,
                place: distance(thing.atM, unit, 2),
              })}
              onClick={() => model.change(thing.without)}
            />
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);
