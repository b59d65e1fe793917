import { render } from 'preact';
import { App } from './screens/app.tsx';
import { SoundState } from './screens/parts/soundState.tsx';
import { PlanScreen } from './screens/plan/plan.tsx';
import { RehearseScreen } from './screens/rehearse/rehearse.tsx';
import { watchRoute } from './screens/route.ts';
import './screens/style/base.css';
import './screens/style/chart.css';
import './screens/style/sounding.css';
import './screens/style/plan.css';
import './screens/style/rehearse.css';
import { fakeInputs, fakePlan } from './session/fakeEngine.ts';
import { createPlanModel } from './session/planModel.ts';
import { createRehearseModel } from './session/rehearseModel.ts';
import { pageTime } from './voice/device/pageTime.ts';
import { createSpeaker } from './voice/device/speaker.ts';
import { englishPack } from './voice/packs/english.ts';
import { voiceOf } from './voice/utter.ts';

const page = document.getElementById('page');
if (page === null) throw new Error('index.html has no #page');

const speaker = createSpeaker(englishPack, `/voice/${englishPack.variants.normal.file}`, pageTime);
const voice = voiceOf(englishPack);
const plan = createPlanModel(fakePlan, localStorage);
const route = watchRoute();
const rehearse = createRehearseModel({
  tapeOf: () => ({
    config: {
      plan: fakePlan,
      course: null,
      voice,
    },
    tape: fakeInputs(fakePlan, 0),
  }),
  ear: speaker,
  wake: speaker.wake,
  time: pageTime,
});

render(
  <App
    route={route}
    screens={{
      plan: () => <PlanScreen model={plan} />,
      rehearse: () => <RehearseScreen model={rehearse} sound={<SoundState speaker={speaker} />} />,
      run: () => <main>Run</main>,
    }}
  />,
  page,
);
