// Phrases read on one core, with no two alike, beside the edtf package parsing the same dates as EDTF, in one run.
// Part of `npm run bench`.
import edtf from 'edtf';

const { readDate } = await import('../dist/dates/index.js');

const COUNT = 100_000;
const MONTHS = 'January February March April May June July August September October November December'.split(
  ' ',
);

/** A mix as a list has it; the number makes every phrase different, so that nothing remembered helps. */
const MIX = [
  (year, month, day) => `${day} ${MONTHS[month]} ${year}`,
  (year, month, day) => `${MONTHS[month]} ${day}, ${year}`,
  (year) => `c. ${year}`,
  (year, month) => `${MONTHS[month].slice(0, 3)} ${year}`,
  (year, _month, day) => `${year}-${year + (day % 9) + 1}`,
  (year) => `summer ${year}`,
  (year, month, day) => `${year}-${String(month + 1).padStart(2, '0')}-${String(day).padStart(2, '0')}`,
  (year, month, day) => `${day}.${month + 1}.${year}`,
  (year) => `before ${year}`,
  (year) => `${year} or ${year + 1}`,
  (year) => `Easter ${year}`,
  (year) => `probably ${year}`,
];

const phrases = Array.from({ length: COUNT }, (_, index) => {
  const make = MIX[index % MIX.length];
  const step = Math.floor(index / MIX.length);
  return make(1600 + (step % 425), Math.floor(step / 28) % 12, 1 + (step % 28));
});

function measure(name, items, work) {
  for (const item of items.slice(0, 2000)) work(item);
  const start = process.hrtime.bigint();
  for (const item of items) work(item);
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  const rate = Math.round(items.length / seconds);
  console.log(`${name.padEnd(40)} ${items.length} in ${seconds.toFixed(2)} s: ${rate} a second`);
  return rate;
}

// Phrases in a fixed shuffle, and those that edtf takes: it is slower by far, so it gets a tenth.
const dates = phrases
  .map((phrase) => readDate(phrase))
  .flatMap((reading) => (reading.kind === 'date' ? [reading.edtf] : []));
console.log(
  `${phrases.length} phrases, ${new Set(phrases).size} of them different, ${dates.length} read as dates`,
);
const ours = measure('phrases read', phrases, readDate);
const theirs = measure('EDTF parsed by the edtf package', dates.slice(0, COUNT / 10), edtf);
console.log(`ratio ${(ours / theirs).toFixed(1)}`);
