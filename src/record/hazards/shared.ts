/** Precautions that several hazards share. One constant each, so that a block of several hazards says it once. */

export const OUTSIDE_NO_FLAME =
  'Work outside, away from drains and pits, with no flame, spark, heater, pilot light, hand lamp or running motor near.';
export const EXTINGUISHER =
  'Keep a fire extinguisher for burning liquids (class B) within reach, between you and the way out.';
export const DISCONNECT_BATTERY = 'Take the battery earth lead off first and put it on last.';
export const RINGS_OFF = 'Take off rings, watch and anything on a chain.';
export const IGNITION_OFF = 'Switch the ignition off and earth the plug leads to clean metal.';
export const HANDS_CLEAR =
  'Keep hands, hair, sleeves and tools clear of everything that turns; stop the engine before you reach in.';
export const LET_IT_COOL = 'Let it cool until you can hold a bare hand close to it without feeling heat.';
export const FACE_OUT_OF_LINE = 'Keep your face and other people out of the line in which it would fly.';
export const SECOND_PERSON = 'Have a second adult within call who knows how to stop the work and fetch help.';
export const FRESH_AIR =
  'Work in the open air, or with doors open on two sides and a draught that carries it away from you.';
export const NO_EATING = 'Do not eat, drink or smoke there; wash before you do.';
export const CLOTHES_APART = 'Wash work clothes apart from the household’s.';
export const CLOSED_ROAD = 'Start on private ground or an empty road, with room to stop by other means.';
export const ROAD_LEGAL =
  'On a public road the vehicle must be registered, insured and inspected as local law asks.';

export const BURNING_FUEL_OUT =
  'Fire: get everybody out, close the door behind you, call the fire service. Fight it only at its start, with your back to the way out. Never water on burning fuel.';
export const CLOTHES_ON_FIRE = 'Clothes alight: stop, drop to the ground, roll; then cool the burn.';
export const COOL_BURN =
  'Burn: hold it under cool running water for 20 minutes, take off rings, cover it loosely with clean film; larger than a hand, or on face, hands or joints, to hospital.';
export const RINSE_EYES =
  'In the eye: rinse with running water for at least 20 minutes, lids held open, and go to hospital.';
export const RINSE_SKIN = 'On the skin: wash off with plenty of water and take wet clothes off.';
export const SWALLOWED =
  'Swallowed: do not make anybody vomit; call the poison line or an ambulance, label in hand.';
export const CUT_EYE =
  'Something in the eye: do not rub or pull; cover both eyes lightly and go to hospital.';
export const BLEEDING =
  'Bleeding: press hard on it with a clean cloth, keep pressing, call an ambulance if it does not stop.';
export const FUMES_OUT =
  'Dizzy, sick or a headache: out into fresh air at once, and call an ambulance if it does not pass.';
export const CALL_AMBULANCE = 'Call an ambulance.';
