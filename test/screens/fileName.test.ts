import { expect, test } from 'vitest';
import { fileNameOf } from '../../src/screens/parts/files.tsx';

test.each([
  ['Harbour half, the demo', 'harbour-half-the-demo.json'],
  ['Échauffement léger', 'echauffement-leger.json'],
  ['Spaß am Läufen', 'spass-am-laufen.json'],
  ['…', 'soundline.json'],
])('the file of "%s" has a name that every system takes', (name, file) => {
  expect(fileNameOf(name, 'json')).toBe(file);
});
