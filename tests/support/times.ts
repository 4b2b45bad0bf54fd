/**
 * How often something is tried with random or many cases: all of it in CI, an eighth elsewhere, where somebody waits.
 * @returns a whole number, at least 1
 */
export const times = (all: number): number => (process.env.CI === 'true' ? all : Math.ceil(all / 8));
