/** Who takes a phrase for what an input should have been, and at which argument it stands. */
export const EXPECTING: Readonly<Record<string, (args: number) => number>> = {
  refuse: (args) => (args > 2 ? 1 : 0),
  doorError: () => 1,
  numberThat: () => 0,
  fault: () => 0,
};
