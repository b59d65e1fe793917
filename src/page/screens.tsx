import { App } from '../screens/app.tsx';
import { learnScreen, prepareScreens } from '../screens/laterModels.ts';
import * as later from '../screens/laterScreens.ts';
import { LanguageChooser } from '../screens/parts/languageChooser.tsx';
import { later as whenOpened } from '../screens/parts/later.tsx';
import { OfflineState } from '../screens/parts/offlineState.tsx';
import { SoundState } from '../screens/parts/soundState.tsx';
import { RehearseScreen } from '../screens/rehearse/rehearse.tsx';
import { watchRoute } from '../screens/route.ts';
import { RunScreen } from '../screens/run/run.tsx';
import type { RehearseModel } from '../session/rehearsal/rehearseModel.ts';
import { pageTime } from '../voice/device/pageTime.ts';
import type { Afterwards } from './afterwards.ts';
import type { Before } from './before.ts';
import type { Ground } from './ground.ts';
import type { Running } from './running.ts';
import type { StandBy } from './standBy.ts';

interface Parts {
  readonly ground: Ground;
  readonly before: Before;
  readonly rehearse: RehearseModel;
  readonly running: Running;
  readonly standBy: StandBy;
  readonly review: Afterwards;
}

/** Each screen with what it shows. */
export const pageOf = ({ ground, before, rehearse, running, standBy, review }: Parts) => {
  const { voices, speaker, language } = ground;
  const { plan, pastRuns } = before;
  const { run, practice } = running;
  const { ready, install, offline } = standBy;
  const prepare = prepareScreens(plan, before.preparing);
  const LearnScreen = learnScreen(standBy.learn);
  const AloudScreen = whenOpened(() =>
    import('../screens/aloud/door.tsx').then(({ aloudScreen }) =>
      aloudScreen({ plan, session: practice.plan, spoken: voices.spoken, speaker, time: pageTime }),
    ),
  );
  return (
    <App
      route={watchRoute()}
      screens={{
        goal: () => <prepare.GoalScreen />,
        course: () => <later.CourseScreen model={plan} runs={pastRuns} />,
        plan: () => <later.PlanScreen model={plan} />,
        fuel: () => <prepare.FuelScreen />,
        day: () => <prepare.DayScreen />,
        paper: () => <prepare.PaperScreen />,
        aloud: () => <AloudScreen />,
        whatIf: () => <prepare.WhatIfScreen />,
        practice: () => <later.PracticeScreen model={practice} race={plan} runs={pastRuns} />,
        runs: () => <later.RunsScreen model={review} />,
        rehearse: () => (
          <RehearseScreen
            model={rehearse}
            sound={<SoundState speaker={speaker} />}
            hasOwn={!plan.isExample.value}
          />
        ),
        run: () => <RunScreen model={run} plan={plan.plan.value} isExample={plan.isExample.value} />,
        ready: () => <later.ReadyScreen model={ready} offline={offline.state} install={install} />,
        learn: () => <LearnScreen />,
        share: () => <later.ShareScreen plan={plan} />,
      }}
      foot={
        <>
          <OfflineState offline={offline} />
          <LanguageChooser language={language} voice={voices.state} />
        </>
      }
    />
  );
};
