import { t } from '../../languages/text.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import type { PrepareModel } from '../../session/prepare/prepareModel.ts';
import { Choice } from '../form/choice.tsx';
import { ExamplePlan, NextStep, Steps } from '../plan/steps.tsx';
import { BandPage } from './bandPage.tsx';
import { RacePage } from './racePage.tsx';

export const PaperScreen = ({ model, plan }: { model: PrepareModel; plan: PlanModel }) => {
  const { band, sheet, dateText } = model.paper.value;
  return (
    <main class="paper">
      <div class="no-print">
        <Steps here="paper" />
        <header class="lead-in">
          <h1>{t('Paper')}</h1>
          <p>
            {t(
              "A wrist band and a race sheet, one A4 page each. Print both, or choose the page in the print window. Print at 100 %, without the browser's own headers.",
            )}
          </p>
        </header>
        <ExamplePlan model={plan} />
        <div class="paper-tools">
          <Choice
            label={t('Boards||on the road')}
            name="paperUnit"
            options={[
              ['km', t('Kilometres')],
              ['mile', t('Miles')],
            ]}
            value={plan.plan.value.unit}
            onChange={(unit) => plan.change((p) => ({ ...p, unit }))}
          />
          <div class="buttons">
            <button type="button" class="main-button" onClick={() => window.print()}>
              {t('Print')}
            </button>
          </div>
        </div>
      </div>
      <BandPage band={band} second={plan.plan.value.secondGoal?.kind ?? null} />
      <RacePage sheet={sheet} dateText={dateText} />
      <div class="no-print">
        <NextStep here="paper" />
      </div>
    </main>
  );
};
