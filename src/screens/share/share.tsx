import { useSignal } from '@preact/signals';
import type { ComponentChild } from 'preact';
import { useEffect } from 'preact/hooks';
import { t } from '../../languages/text.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import {
  codeIn,
  decodePlan,
  encodePlan,
  encodeWithin,
  linkOf,
  type PlanCode,
  type SharedPlan,
} from '../../share/code.ts';
import { EASY_CODE_CHARS, MOST_CODE_CHARS } from '../../share/picture.ts';
import { sharedOf, textOf } from '../../share/planFile.ts';
import { rich } from '../parts/rich.tsx';
import { Code } from './picture.tsx';
import { ReadPicture } from './readPicture.tsx';

/** A plan on its way to another device: as a link, as a picture code, and back. Nothing passes any server. */
export const ShareScreen = ({ plan }: { plan: PlanModel }) => (
  <main class="run-before share">
    <header class="lead-in">
      <h1>{t('Hand a plan over')}</h1>
      <p>
        {t(
          'From this device to another, a wrist for instance, without any server: the plan is in the link and in the picture, whole.',
        )}
      </p>
    </header>
    {/* Who comes by a link wants what is in it, and sees it first. */}
    {location.hash.startsWith('#/share/') ? (
      <>
        <Take plan={plan} />
        <Give plan={plan} />
      </>
    ) : (
      <>
        <Give plan={plan} />
        <Take plan={plan} />
      </>
    )}
    <p class="next-step">
      <a class="button" href="#/plan">
        {t('Back to the plan')}
      </a>
    </p>
  </main>
);

interface Given {
  readonly link: string;
  readonly picture: PlanCode | null;
}

const give = async (shared: SharedPlan): Promise<Given> => {
  const room = (chars: number): number => chars - linkOf(location.origin, '').length;
  const [link, easy] = await Promise.all([encodePlan(shared), encodeWithin(shared, room(EASY_CODE_CHARS))]);
  const picture = easy ?? (await encodeWithin(shared, room(MOST_CODE_CHARS)));
  return { link: linkOf(location.origin, link.text), picture };
};

const Give = ({ plan }: { plan: PlanModel }) => {
  const given = useSignal<Given | null>(null);
  const copied = useSignal(false);
  const file = plan.planFile();
  useEffect(() => {
    let stale = false;
    copied.value = false;
    give(sharedOf(file)).then(
      (next) => {
        if (!stale) given.value = next;
      },
      () => {},
    );
    return () => {
      stale = true;
    };
  }, [file]);
  const now = given.value;
  if (now === null) return <p role="status">{t('A moment …')}</p>;
  const { link, picture } = now;
  return (
    <section aria-label={t('Give||a plan')}>
      <h2>{t('Give: {plan}', { plan: plan.plan.value.name })}</h2>
      {picture === null ? (
        <p class="note">{t('This plan is too long for a picture code. Use the link.')}</p>
      ) : (
        <>
          <Code text={linkOf(location.origin, picture.text)} />
          <p class="note">
            {picture.courseOffM === 0
              ? t('Photograph it from the other device. It holds the whole plan.')
              : t(
                  'Photograph it from the other device. It holds the whole plan; the course is drawn with fewer points, to within {distance} m. The link holds every point.',
                  { distance: picture.courseOffM },
                )}
          </p>
        </>
      )}
      <div class="buttons">
        <button
          type="button"
          class="main-button"
          onClick={() =>
            navigator.clipboard.writeText(link).then(
              () => {
                copied.value = true;
              },
              () => {},
            )
          }
        >
          {copied.value ? t('Copied') : t('Copy the link')}
        </button>
      </div>
      <label class="field">
        {t('The link, {n} characters', { n: link.length })}
        <input type="text" readonly value={link} onFocus={(event) => event.currentTarget.select()} />
      </label>
      <p class="note">
        {t('Whoever has the link has the plan and its course. It is never sent anywhere by itself.')}
      </p>
    </section>
  );
};

const foundText = ({ plan, course }: SharedPlan): ComponentChild[] => {
  const name = <b>{String(plan['name'] ?? t('without a name'))}</b>;
  return course === null
    ? rich('A plan is here: {name}, without a course.', { name })
    : rich('A plan is here: {name}, with a course of {n} points.', { name, n: course.length });
};

const Take = ({ plan }: { plan: PlanModel }) => {
  const trouble = useSignal<string | null>(null);
  const found = useSignal<SharedPlan | null>(null);
  const taken = useSignal(false);

  const read = async (text: string): Promise<void> => {
    taken.value = false;
    const got = await decodePlan(codeIn(text));
    found.value = got.ok ? got.value : null;
    trouble.value = got.ok ? null : t(got.error);
  };
  useEffect(() => {
    const look = (): void => {
      if (location.hash.startsWith('#/share/')) void read(location.hash);
    };
    look();
    addEventListener('hashchange', look);
    return () => removeEventListener('hashchange', look);
  }, []);

  const take = (): void => {
    if (found.value === null) return;
    trouble.value = plan.importPlan(textOf(found.value));
    taken.value = trouble.value === null;
    found.value = null;
  };

  return (
    <section aria-label={t('Take||a plan')}>
      <h2>{t('Take||a plan')}</h2>
      {trouble.value !== null && (
        <p class="alarm" role="alert">
          {trouble.value}
        </p>
      )}
      {found.value !== null && (
        <div class="found">
          <p>
            {foundText(found.value)} {t('Taking it replaces the plan in the form.')}
          </p>
          <div class="buttons">
            <button type="button" class="main-button" onClick={take}>
              {t('Take this plan')}
            </button>
          </div>
        </div>
      )}
      {taken.value && (
        <p role="status">
          {t('Taken.')} <a href="#/plan">{t('See the plan')}</a> · <a href="#/run">{t('To the start')}</a>
        </p>
      )}
      <label class="field">
        {t('Paste a link here')}
        <input type="text" onChange={(event) => void read(event.currentTarget.value)} />
      </label>
      <ReadPicture
        onText={(text) => void read(text)}
        onTrouble={(text) => {
          trouble.value = text;
        }}
      />
    </section>
  );
};
