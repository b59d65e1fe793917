import { useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import type { PlanModel } from '../../session/planModel.ts';

interface Props {
  readonly plan: PlanModel;
}

/**
 * The one screen that is loaded when it is opened: what draws and reads codes is half as big as all the rest, and nobody
 * needs it in a race. It lies with everything else in the offline store.
 */
export const ShareDoor = ({ plan }: Props) => {
  const screen = useSignal<ComponentType<Props> | null>(null);
  const failed = useSignal(false);
  useEffect(() => {
    import('./share.tsx')
      .then((module) => {
        screen.value = module.ShareScreen;
      })
      .catch(() => {
        failed.value = true;
      });
  }, []);
  const Screen = screen.value;
  if (Screen !== null) return <Screen plan={plan} />;
  return (
    <main class="run-before">
      <h1>Hand a plan over</h1>
      <p role="status">
        {failed.value ? 'This part could not be loaded. Open the page again.' : 'A moment …'}
      </p>
    </main>
  );
};
