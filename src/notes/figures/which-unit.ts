/** A unit's word that stands for several things, told by the words around; empty where they do not tell. */
import type { Candidate } from './figure.ts';
import type { Leaning } from './leaning.ts';
import { around, at, type Token } from './tokens.ts';

const FLUID =
  / (?:oil|oils|fluid|petrol|fuel|water|coolant|antifreeze|paraffin|solution|poured?|pouring|fill|filled|filling|syringe|syringed|drained|bottle|jug|squirt|thinners|mixture|mix|gas|diesel|acid|atf|brew|spirit|dot|bled|top up|topped|tank|carton|tin of|came out|level|threw|spilled|spilt|leaked|header|expansion|reservoir|sump|jar|dregs|hardener|thinner|resin|paint|primer|lacquer|distilled|electrolyte|cells|litre|litres|liter|liters|pint|pints|gallon|gallons|can) /;
const SIZE =
  / (?:wide|long|thick|deep|across|bore|diameter|gap|spanner|socket|nut|bolt|drill|washer|hole|free length|free|play|clearance|between|apart|shim|stud|thread|plate|bar|square|round|short|out|off|gauge|feeler|calipers?|micrometer|rule|stroke|lift|throw|depth|height|width|length|hose|pipe|tube|strip|sheet|screw) /;

/** "mil", "mill": a millimetre of a thing, a millilitre of a fluid. */
export function whichMil(tokens: readonly Token[], one: Candidate): string {
  const close = around(tokens, one.to, one.to + 3);
  const poured = / (?:fill|filled|filling|pour|poured|topped|syringed?|drained|squirted?|bled) /;
  if (/^ of /.test(close))
    return FLUID.test(` ${close.slice(4)}`) || poured.test(around(tokens, one.from - 4, one.from))
      ? 'mL'
      : 'mm';
  const large = one.value >= 100;
  const near = around(tokens, one.from - (large ? 14 : 9), one.to + 7);
  if (
    large &&
    FLUID.test(near) &&
    !SIZE.test(around(tokens, one.from - 5, one.to + 5).replace(/ (?:out|off|free)(?= )/g, ''))
  )
    return 'mL';
  if (SIZE.test(around(tokens, one.to, one.to + 1))) return 'mm';
  if (!FLUID.test(near) || (one.decimal && one.value < 20)) return 'mm';
  return one.value >= 50 || !SIZE.test(near.replace(/ (?:out|off|free)(?= )/g, ''))
    ? FLUID.test(around(tokens, one.from - 6, one.to + 5)) && one.value >= 20
      ? 'mL'
      : 'mm'
    : 'mm';
}

const ANGLE =
  / (?:advance|advanced|retard|retarded|timing|timed|crank|crankshaft|tdc|btdc|atdc|dead|dwell|angle|spark|sparks|ignition|protractor|disc|castor|caster|camber|toe|steer|steering|lock|bend|bent|turn|turned|flywheel|rotor|rotate|rotated|included|chamfer|chamfered|chamfers|countersink|point|points|rim|cam|lobe|gave|rocked|sweep|swept|play|wheel|lever|pedal|arm|thru|through|swings|swing|lean|tilt|taper|spiral|past|further|mark|twist|twisted|port|ports|slope|seat|seats|bevel) /;
const HEAT =
  / (?:cold|warm|warmed|hot|temperature|temp|thermometer|boil|boiling|boiled|oven|heat|heated|freezing|freezer|outside|outdoors|celsius|fahrenheit|weather|morning|shed|garage|lean|stick|gauge|water|oil|coolant|radiator|iron|paint|powder|cure|bake|baked|stove|thermostat|sun|shade|frost|minus|below|above|engine|today|tonight|room|workshop|solder|soldering|soldered|melt|melts|melted|bath|kettle|flame|ambient) /;

/** "degrees" of an angle or of heat, by the nearest words; where there are none, by the one kind that the text speaks of elsewhere. */
export function whichDegrees(
  tokens: readonly Token[],
  one: Candidate,
  { fahrenheit, heat: only, angles }: Leaning,
): string {
  const said = angles ? '' : only;
  const score = (topic: RegExp): number => {
    for (const reach of [3, 7, 14])
      if (topic.test(around(tokens, one.from - reach, one.to + reach))) return 20 - reach;
    return 0;
  };
  const after = around(tokens, one.to, one.to + 4);
  const here = /^ (?:in here|outside|in the (?:shed|garage|room|workshop|kitchen|house|sun|shade)) /.test(
    after,
  );
  const [angle, heat] = [score(ANGLE), here ? 20 : score(HEAT)];
  if (angle > heat || (one.decimal && one.value < 10 && heat === 0)) return 'deg';
  if (
    angle === heat &&
    angle > 0 &&
    / (?:advance|timing|crank|tdc|btdc|ignition|dwell|dead|protractor|castor|camber|angle) /.test(
      around(tokens, one.from - 9, one.to + 9),
    )
  )
    return 'deg';
  if (angle === 0 && heat === 0 && /^(?:45|270|360)$/.test(String(one.value))) return 'deg';
  if (angle === 0 && heat === 0 && /^(?:45|60|90|120|180|270|360)$/.test(String(one.value))) return '';
  if (heat === 0 && angle === 0) return said;
  return fahrenheit ? (said === 'degF' ? 'degF' : '') : 'degC';
}

const words = (list: string): ReadonlySet<string> => new Set(list.split(' '));
const WEIGHT = words('weigh weighs weighed weight weighing scales scale mass lump hammer balance');
const HEAVY = words('heavy heavier lift lifts lifted load loaded carries ballast nails');
const PRESSURE = words(
  'tyre tyres tire tires pressure pressures compression pumped pump inflate inflated inflating air gauge compressor boost psi valve valves bead',
);
const TORQUE = words('torque torqued wrench tighten tightened nipped');
const PAID = words(
  'paid pay cost costs costing price priced bought buy postage posted each charged bill quid spent spend sold worth owe owes freight carriage delivered delivery cheap cheaper pair total plus fee duty refund asking pence fitted apiece lot set ea deposit scrap bargain invoice receipt tax vat',
);

/** How many words off the nearest of a set stands. */
function wordsOff(tokens: readonly Token[], one: Candidate, set: ReadonlySet<string>): number {
  for (let far = 1; far <= 14; far++)
    if (set.has(at(tokens, one.from - far)) || set.has(at(tokens, one.to + far - 1))) return far;
  return Number.POSITIVE_INFINITY;
}

/** "pounds" of money, of mass, or short for a pressure; the nearest word tells, else money. Empty where a torque is meant, whose arm nobody said. */
export function whichPounds(tokens: readonly Token[], one: Candidate, psi: boolean): string {
  const before = at(tokens, one.from - 1);
  if (/^(?:spanner|hammer|sledge|mallet|lump|weight|bag|block|club)s?$/.test(at(tokens, one.to))) return 'lb';
  if (
    / new (?:tyre|tyres|tube|tubes|valve|valves) (?:was|were|is|are|at|for) $/.test(
      around(tokens, one.from - 4, one.from),
    )
  )
    return 'GBP';
  const pressure = wordsOff(tokens, one, PRESSURE);
  if (/^(?:for|paid|cost)$/.test(before) && pressure > 3) return 'GBP';
  if (at(tokens, one.to) === 'of' && !/^(?:the|it|this|that)$/.test(at(tokens, one.to + 1)))
    return pressure < 4 || /^(?:air|pressure|boost)$/.test(at(tokens, one.to + 1)) ? 'psi' : 'lb';
  if (psi && / in (?:it|there|them|that|the) /.test(around(tokens, one.to, one.to + 4))) return 'psi';
  const near = [
    ['lb', wordsOff(tokens, one, WEIGHT)],
    ['GBP', wordsOff(tokens, one, PAID)],
    ['psi', pressure <= (psi ? 14 : 6) ? pressure : Number.POSITIVE_INFINITY],
    ['lb', wordsOff(tokens, one, HEAVY) <= 4 ? wordsOff(tokens, one, HEAVY) + 2 : Number.POSITIVE_INFINITY],
    ['', wordsOff(tokens, one, TORQUE)],
  ] as const;
  const [unit, far] = near.reduce((a, b) => (b[1] < a[1] ? b : a));
  return far === Number.POSITIVE_INFINITY ? 'GBP' : unit;
}
