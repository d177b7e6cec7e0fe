/** A unit's word that stands for several things, told by the words around; empty where they do not tell. */
import type { Candidate } from './figure.ts';
import { around, type Token } from './tokens.ts';

const FLUID =
  / (?:oil|oils|fluid|petrol|fuel|water|coolant|antifreeze|paraffin|solution|poured?|pouring|fill|filled|filling|syringe|syringed|drained|bottle|jug|squirt|thinners|mixture|mix|gas|diesel|acid|atf|brew|spirit|dot|bled|top up|topped|tank|carton|tin of|came out|level|threw|spilled|spilt|leaked|header|expansion|reservoir|sump) /;
const SIZE =
  / (?:wide|long|thick|deep|across|bore|diameter|gap|spanner|socket|nut|bolt|drill|washer|hole|free length|free|play|clearance|between|apart|shim|stud|thread|plate|bar|square|round|short|out|off|gauge|feeler|calipers?|micrometer|rule|stroke|lift|throw|depth|height|width|length|hose|pipe|tube|strip|sheet|screw) /;

/** "mil", "mill": a millimetre of a thing, a millilitre of a fluid. */
export function whichMil(tokens: readonly Token[], one: Candidate): string {
  const close = around(tokens, one.to, one.to + 3);
  if (/^ of /.test(close)) return FLUID.test(` ${close.slice(4)}`) ? 'mL' : 'mm';
  if (SIZE.test(around(tokens, one.to, one.to + 2))) return 'mm';
  const near = around(tokens, one.from - 9, one.to + 7);
  if (!FLUID.test(near) || (one.decimal && one.value < 20)) return 'mm';
  return one.value >= 50 || !SIZE.test(near) ? (FLUID.test(around(tokens, one.from - 6, one.to + 5)) && one.value >= 20 ? 'mL' : 'mm') : 'mm';
}

const ANGLE =
  / (?:advance|advanced|retard|retarded|timing|timed|crank|crankshaft|tdc|btdc|atdc|dead|dwell|angle|spark|sparks|ignition|protractor|disc|castor|caster|camber|toe|steer|steering|lock|bend|bent|turn|turned|flywheel|rotor|rotate|rotated|included|chamfer|countersink|point|points|rim|cam|lobe|before|after|lean|tilt|taper|spiral|past|further|mark|twist|port|ports|slope|seat|seats|bevel) /;
const HEAT =
  / (?:cold|warm|warmed|hot|temperature|temp|thermometer|boil|boiling|boiled|oven|heat|heated|freezing|freezer|outside|outdoors|celsius|fahrenheit|weather|morning|shed|garage|lean|stick|gauge|water|oil|coolant|radiator|iron|paint|powder|cure|bake|baked|stove|thermostat|sun|shade|frost|minus|below|above|engine|today|tonight|room|workshop) /;

/** "degrees" of an angle or of heat; Celsius, unless the text speaks of Fahrenheit. */
export function whichDegrees(tokens: readonly Token[], one: Candidate, fahrenheit: boolean): string {
  const score = (topic: RegExp): number => {
    for (const reach of [3, 7, 14]) if (topic.test(around(tokens, one.from - reach, one.to + reach))) return 20 - reach;
    return 0;
  };
  const [angle, heat] = [score(ANGLE), score(HEAT)];
  if (angle > heat || (one.decimal && one.value < 10 && heat === 0)) return 'deg';
  if (angle === heat && angle > 0 && / (?:advance|timing|crank|tdc|btdc|ignition|dwell|dead|protractor|castor|camber|angle) /.test(around(tokens, one.from - 9, one.to + 9))) return 'deg';
  if (angle === 0 && heat === 0 && /^(?:45|60|90|120|180|270|360)$/.test(String(one.value))) return '';
  return fahrenheit ? (one.value > 45 ? '' : '') : 'degC';
}

const WEIGHT = / (?:weigh|weighs|weighed|weight|weighing|scales|mass|spring balance|lump hammer) /;
const HEAVY = / (?:heavy|heavier|lift|lifts|lifted|hammer|lump|load|loaded|carries|ballast|nails|of) /;
const PRESSURE = / (?:tyre|tyres|pressure|pressures|compression|pumped|pump|inflate|inflated|inflating|air|gauge|compressor|boost|psi|valve|bead) /;
const TORQUE = / (?:torque|torqued|wrench|tighten|tightened|tight|done up|pulled up|nipped) /;
const PAID =
  / (?:paid|pay|cost|costs|costing|price|priced|bought|buy|post|postage|posted|each|charged|bill|quid|spent|spend|sold|worth|owe|owes|freight|carriage|delivered|delivery|cheap|cheaper|the pair|the lot|the set|came to|total|plus|fee|duty|refund|asking|pence|fitted|carriage) /;

/** "pounds" of money, of mass, or short for a pressure or a torque: the nearest word tells, else money; in a text that measures pressure in psi, pressure. */
export function whichPounds(tokens: readonly Token[], one: Candidate, psi: boolean): string {
  if (/^(?: for| paid| cost)/.test(around(tokens, one.from - 1, one.from)) && !PRESSURE.test(around(tokens, one.from - 3, one.to + 3))) return 'GBP';
  if (/^ of (?!the |it |this |that )/.test(around(tokens, one.to, one.to + 2))) return 'lb';
  for (const reach of [2, 4, 8, 14]) {
    const near = around(tokens, one.from - reach, one.to + reach);
    if (WEIGHT.test(near)) return 'lb';
    if (PAID.test(near)) return 'GBP';
    if (HEAVY.test(near) && reach < 5) return 'lb';
    if (psi && PRESSURE.test(near)) return 'psi';
    if (PRESSURE.test(near) && reach < 8) return 'psi';
    if (TORQUE.test(near) && reach < 8) return '';
  }
  return 'GBP';
}
