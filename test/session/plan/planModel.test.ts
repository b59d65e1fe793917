import { expect, test } from 'vitest';
import { demoPlan } from '../../../src/demo/race.ts';
import { createPlanModel } from '../../../src/session/plan/planModel.ts';

const storage = () => {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  };
};

const LINE = [
  { latitudeDeg: 54, longitudeDeg: 7, elevationM: null },
  { latitudeDeg: 54.19, longitudeDeg: 7, elevationM: null },
];

test('the demo made one’s own has nobody’s stations and gels, and can be had back', () => {
  const model = createPlanModel(demoPlan, storage());
  expect(model.isExample.value).toBe(true);
  model.makeOwn();
  expect(model.isExample.value).toBe(false);
  expect(model.plan.value).toMatchObject({ name: 'My race', goalS: demoPlan.goalS, stations: [], fuel: [] });
  model.undo();
  expect(model.plan.value).toEqual(demoPlan);
});

test('it has the name of the course that was opened before', () => {
  const model = createPlanModel(demoPlan, storage());
  model.setCourse({ name: 'Bay half', points: LINE });
  model.makeOwn();
  expect(model.plan.value.name).toBe('Bay half');
  expect(model.course.value).not.toBeNull();
});

test('a plan of one’s own is no example when the page is opened again', () => {
  const keep = storage();
  createPlanModel(demoPlan, keep).makeOwn();
  expect(createPlanModel(demoPlan, keep).isExample.value).toBe(false);
});
