import type { FunctionComponent } from 'preact';
import { type AloudParts, createAloudModel } from '../../session/aloud/aloudModel.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import { AloudScreen } from './aloud.tsx';

/** The screen with its model: both come when it is first opened, for a race needs neither, and what was chosen stays. */
export const aloudScreen = (parts: AloudParts & { readonly plan: PlanModel }): FunctionComponent => {
  const model = createAloudModel(parts);
  return () => {
    const { unit, goalBy } = parts.plan.plan.value;
    return <AloudScreen model={model} unit={unit} goalBy={goalBy} plan={parts.plan} />;
  };
};
