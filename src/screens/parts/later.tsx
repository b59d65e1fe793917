import { useSignal } from '@preact/signals';
import type { ComponentType, FunctionComponent } from 'preact';
import { useEffect } from 'preact/hooks';
import { t } from '../../languages/text.ts';

/**
 * A screen that is loaded when it is first opened: nobody waits for it who wants to run, and it lies with everything else
 * in the offline store. Nothing that a race needs comes this way.
 */
export const later = <Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): FunctionComponent<Props> => {
  let loaded: ComponentType<Props> | null = null;
  return (props) => {
    const state = useSignal<'loading' | 'here' | 'failed'>(loaded === null ? 'loading' : 'here');
    useEffect(() => {
      if (loaded !== null) return;
      load().then(
        (screen) => {
          loaded = screen;
          state.value = 'here';
        },
        () => {
          state.value = 'failed';
        },
      );
    }, []);
    const Screen = state.value === 'here' ? loaded : null;
    if (Screen !== null) return <Screen {...props} />;
    return (
      <main class="run-before">
        <p role="status">
          {state.value === 'failed'
            ? t('This screen could not be loaded. Open the page again with a network.')
            : t('A moment …')}
        </p>
      </main>
    );
  };
};

/**
 * A screen that is loaded together with what it shows: side by side, for the one need not wait for the other.
 * @param models  gives the same on every call, so that what was typed on one screen is there on the next
 */
export const laterWith = <Models, Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  models: () => Promise<Models>,
  propsOf: (models: Models) => Props,
): FunctionComponent =>
  later(async () => {
    const [Screen, made] = await Promise.all([load(), models()]);
    return () => <Screen {...propsOf(made)} />;
  });
