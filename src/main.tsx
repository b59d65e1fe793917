import { signal } from '@preact/signals';
import { render } from 'preact';
import { App } from './screens/app.tsx';
import { RehearseScreen } from './screens/rehearse/rehearse.tsx';
import { watchRoute } from './screens/route.ts';
import './screens/style/base.css';
import './screens/style/chart.css';
import './screens/style/sounding.css';
import './screens/style/rehearse.css';
import { fakeInputs, fakePlan } from './session/fakeEngine.ts';
import { createRehearseModel } from './session/rehearseModel.ts';

const page = document.getElementById('page');
if (page === null) throw new Error('index.html has no #page');

const time = {
  nowMs: () => performance.now(),
  every: (ms: number, run: () => void) => {
    const timer = setInterval(run, ms);
    return () => clearInterval(timer);
  },
};

const route = watchRoute();
const silent = signal(0);
const rehearse = createRehearseModel({
  tapeOf: () => ({
    config: {
      plan: fakePlan,
      course: null,
      voice: { utter: (s) => ({ text: `${s.kind}`, parts: [], durationS: 2 }) },
    },
    tape: fakeInputs(fakePlan, 0),
  }),
  ear: { say: () => 'silent', takeBack: () => {}, hush: () => {} },
  wake: async () => silent.value > 0,
  time,
});

render(
  <App
    route={route}
    screens={{
      plan: () => <main>Plan</main>,
      rehearse: () => <RehearseScreen model={rehearse} sound={null} />,
      run: () => <main>Run</main>,
    }}
  />,
  page,
);
