/** A made recording as speech recognition gives it: a time, then running words without stops, small letters, a line's end anywhere. */

/** The same figures for the same seed, everywhere. */
function dice(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

const words = (list: string): readonly string[] => list.split(',').map((one) => one.trim());

/** What stands for a slot of a sentence. */
const SLOTS: Readonly<Record<string, readonly string[]>> = {
  part: words(
    'wheel cylinder, brake shoe, back plate, hub nut, stub axle, kingpin, track rod, steering arm, drop arm, leaf spring, shackle pin, damper, engine mount, cylinder head, head gasket, push rod, rocker shaft, inlet valve, exhaust valve, valve guide, timing chain, tensioner, flywheel, clutch plate, release bearing, gearbox mount, gear lever, selector fork, prop shaft, dynamo, starter motor, distributor, contact points, condenser, ignition coil, carburettor, float needle, main jet, fuel tap, fuel pump, tank sender, filler neck, radiator, water pump, thermostat housing, bottom hose, exhaust manifold, silencer, door hinge, window winder, wiper motor, head lamp, rear lamp, loom, fuse box, battery tray, seat frame, floor pan, sill, cross member, bulkhead, bonnet catch, hand brake cable, speedo cable, master cylinder, brake pipe, bleed screw, drum, hub bearing, oil seal, sump plug, dip stick, rocker cover',
  ),
  side: words('left, right, front, rear, inner, outer, upper, lower, near side, off side'),
  harm: words(
    'cracked, worn, scored, pitted, seized, bent, leaking, rounded off, rusted through, split, chewed up, blue with heat, perished, loose, stuck fast, missing altogether, snapped off, oval, dry as a bone, full of sludge',
  ),
  did: words(
    'took, cleaned, drained, marked, greased, filed, straightened, soldered, tapped, wire brushed, degreased, painted, measured, checked, shimmed, adjusted, tightened, loosened, unbolted, lifted',
  ),
  way: words('off, out, up, down, apart'),
  tool: words(
    'a puller, the long bar, two screwdrivers, a soft hammer, the ring spanner, a tap, the heat gun, a bit of string, the hand drill, the press, a scraper, the small torch',
  ),
  stuff: words('petrol, gear oil, grease, brake fluid, coolant, paraffin, primer, thinners, old paint, rust'),
  size: words('mm, millimetres, thou, inches, centimetres'),
  small: words(
    'point two, point four, one point six, three point five, twelve, seventeen, eight, five, two and a half',
  ),
  torque: words('twelve, eighteen, twenty five, forty, sixty'),
  load: words('newton metres, foot pounds'),
  amount: words('two, three, four, six, eight, twelve'),
  sum: words(
    'four pounds fifty, twelve euros, thirty one pounds, nine euros eighty, twenty two pounds, six euros, one hundred and ten euros, eighteen pounds',
  ),
  who: words('vashti, berta, the man at the yard, my sister, the neighbour, somebody who writes in'),
  gave: words(
    'lending the press, the loan of the stands, holding the other end, sending the drawing, two old bolts',
  ),
  talk: words(
    'let me move the light, the kettle is on, you cannot see that on the camera, sorry about the noise, it is cold in here today, hang on a moment, that is better',
  ),
  when: words('next time, another day, when the parts are here, after the winter, once it runs'),
  feel: words('tight, free, rough, heavy, sweet, notchy, gritty, smooth, stiff, right'),
};

const SAYINGS: readonly string[] = [
  'right so this is the {side} {part} and the plan is to have it out before dark',
  'i {did} the {part} with {tool} and it came away in one piece',
  'first the {part} has to come {way} so i put the stands under the cross member',
  'the {side} {part} is {harm} and so is the {part} behind it',
  'there is {stuff} all over the {part} so i wiped it down and looked again',
  'then i {did} the {side} {part} and set it on the bench',
  'we have {small} {size} at the widest and {small} {size} the other way on the {part}',
  'the {part} wants to be {small} {size} and the limit in the book is {small} {size}',
  'about {amount} litres of {stuff} came out into the tray',
  'the {amount} bolts of the {part} go up to {torque} {load} with the wrench',
  'i have a new {part} on order {sum} plus {sum} postage',
  'the {part} was {sum} from the shop and the {part} another {sum}',
  'thanks to {who} for {gave}',
  'the {part} turns but it feels {feel} and i do not like it',
  'now the {part} is {harm} that is for {when}',
  'it might be the {part} or it might be the {part} i cannot tell yet',
  'uh {talk}',
  '{talk} okay where were we',
  'somebody has been at the {part} with {tool} before me',
  'so the {part} goes back on the same way as it came with a little {stuff} on the thread',
  'i tried {tool} on the {part} and it would not budge so i left it with {stuff} overnight',
  'mind your fingers there the {part} has more pull than it looks',
  'the wire to the {part} is {harm} and the plug was only hanging on by a strand',
  'charged the battery at {amount} amps and it reads twelve point six volts this morning',
  'the {side} one is {feel} and the {side} one is {harm}',
  'we jacked up the {side} corner and took the wheel off',
  'bled the brakes twice and the pedal is {feel} now',
  'and that is the {part} done it went in {feel} with {tool}',
  'you need {tool} for the {part} and a bit of patience',
  'the engine ticks over at nine hundred and the {part} has stopped rattling',
  'gloves on because the {stuff} burns and no flame anywhere near the {part}',
  'the gap was {small} {size} so i opened it to {small} {size} with a feeler',
  'i said last week that the {part} was fine well it is {harm}',
  'the thread in the {part} is {harm} i will have to drill it and put an insert in',
  'this {part} is not from this machine at all it is {small} {size} too long',
  'put the {part} in the box with the number of the {part} on it',
];

const LINE = 110;

/** The seconds as "[1:02:07]" is written. */
const stamp = (seconds: number): string => {
  const two = (value: number): string => String(value).padStart(2, '0');
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  return hours > 0 ? `[${hours}:${two(minutes)}:${two(seconds % 60)}]` : `[${minutes}:${two(seconds % 60)}]`;
};

/** A recording of at least so many characters. The same size gives the same text. */
export function madeTranscript(characters: number): string {
  const roll = dice(11);
  const pick = (list: readonly string[]): string => list[roll(list.length)] ?? '';
  const lines: string[] = [];
  let length = 0;
  let seconds = 7;
  while (length < characters) {
    const said = Array.from({ length: 2 + roll(3) }, () =>
      pick(SAYINGS).replace(/\{(\w+)\}/g, (_, slot: string) => pick(SLOTS[slot] ?? [])),
    ).join(roll(3) === 0 ? ' and ' : ' ');
    const entry = wrapped(`${stamp(seconds)} ${said}`);
    lines.push(entry);
    length += entry.length + 1;
    // People say about two and a half words in a second.
    seconds += Math.ceil(said.split(' ').length / 2.5);
  }
  return `${lines.join('\n')}\n`;
}

function wrapped(text: string): string {
  const lines = [''];
  for (const word of text.split(' ')) {
    const last = lines.at(-1) ?? '';
    if (last.length + word.length >= LINE) lines.push(word);
    else lines[lines.length - 1] = last === '' ? word : `${last} ${word}`;
  }
  return lines.join('\n');
}
