/** Units of the trade as they are written and said, longest first. `case` wants the letter as written ("5 A", not "5 a"). */
export interface UnitWord {
  unit: string;
  words: RegExp;
  /** Only behind digits, never behind a number said in words. */
  digits?: true;
  /** Looked for in the text as written, not in small letters. */
  exact?: true;
}

const rule = (unit: string, words: string): UnitWord => ({
  unit,
  words: new RegExp(`(?:${words})(?![a-z0-9])`, 'y'),
});
const exact = (unit: string, words: string): UnitWord => ({
  unit,
  words: new RegExp(`(?:${words})(?![A-Za-z0-9])`, 'y'),
  digits: true,
  exact: true,
});
const close = (unit: string, words: string): UnitWord => ({ ...rule(unit, words), digits: true });

export const UNIT_WORDS: readonly UnitWord[] = [
  rule(
    'L/100km',
    'l ?/ ?100 ?km|lit(?:re|er)s? (?:a|per|for a|to the|to a) hundred(?: kilomet(?:re|er)s| k)?',
  ),
  rule('mpg', 'mpg|miles (?:per|to the|a) gallon'),
  rule('N m', 'n ?m|n[.·*⋅]m|newton[ -]?met(?:re|er)s?'),
  rule('lbf ft', 'lbf?[ .·-]?ft|ft[ .·-]?lbf?s?|foot[ -]?pounds?(?:[ -]force)?|pounds?[ -](?:foot|feet)'),
  rule('lbf in', 'lbf?[ .·-]in|in[ .·-]lbf?s?|inch[ -]?pounds?'),
  rule('psi', 'psi|p\\.s\\.i\\.?|pounds? (?:per|to the|a) square inch'),
  rule('bar', 'bars?'),
  rule('kPa', 'kpa|kilopascals?'),
  rule('km/h', 'km ?/ ?h|kmh|kph|km per hour|kilomet(?:re|er)s? (?:an|per|in the) hour'),
  rule('mph', 'mph|m\\.p\\.h\\.?|miles? (?:an|per) hour'),
  rule(
    'rpm',
    'rpm|r\\.p\\.m\\.?|rev ?/ ?min|revs? (?:per|a) minute|revolutions (?:per|a) minute|revs(?! up)',
  ),
  rule('mm2', 'mm2|mm²|mm\\^2|square mil(?:limet(?:re|er)s?|s)?|sq\\.? ?mm'),
  rule('cm2', 'cm2|cm²|square centimet(?:re|er)s?'),
  rule('mm', 'mm|millimet(?:re|er)s?|mils?(?= across| thick| long| wide| deep)'),
  rule('cm3', 'cm3|cm³|ccm?|cubic centimet(?:re|er)s?'),
  rule('cm', 'cm|centimet(?:re|er)s?'),
  rule('km', 'km|kms|kilomet(?:re|er)s?'),
  rule('mi', 'miles?'),
  rule('um', 'µm|μm|um|microns?|micromet(?:re|er)s?'),
  rule('thou', 'thou(?:s)?|thousandths? of an inch'),
  rule(
    'in',
    'in(?=\\.|,|;|$|\\n| thick| long| wide| deep| bore| dia| drive| bolt| bsf| bsw| unf| unc| whit| thread| spanner| socket| drill| at | and | of | gap| plug| x | play| clear| hose| pipe| bar|\\))|inch(?:es)?',
  ),
  rule('in', '["″”](?! ?[a-z]+["“])'),
  rule('ft', 'ft|feet|foot(?! pound)'),
  rule('yd', 'yards?'),
  rule('mL', 'ml|millilit(?:re|er)s?|mils?(?= of| oil)'),
  rule('L', 'l(?:tr?s?)?|lit(?:re|er)s?'),
  rule('gal', 'gal(?:s|lons?)?'),
  rule('imp gal', 'imp(?:erial)? gal(?:s|lons?)?'),
  rule('US gal', 'us gal(?:s|lons?)?'),
  rule('pt', 'pints?|pts?(?= of| oil)'),
  rule('qt', 'quarts?'),
  rule('fl oz', 'fl\\.? ?oz|fluid ounces?'),
  rule(
    'deg',
    'degrees? (?:before|after|btdc|atdc|advance|of|on the|at the crank)|deg(?:rees)? (?:btdc|atdc)|°(?! ?[cf])',
  ),
  rule('degF', '° ?f|deg(?:rees?)?\\.? ?f(?:ahrenheit)?'),
  rule('degC', '° ?c|deg(?:rees?)?\\.? ?c(?:elsius|entigrade)?|celsius|centigrade'),
  rule('deg?', 'deg(?:rees?)?'),
  exact('degC', 'C'),
  rule('Ah', 'ah|amp(?:ere)?[ -]hours?'),
  rule('mV', 'mv|millivolts?'),
  rule('V', 'volts?'),
  close('V', 'v'),
  rule('mA', 'milliamp(?:ere)?s?'),
  rule('A', 'amps?|amperes?'),
  exact('A', 'A'),
  rule('kW', 'kw|kilowatts?'),
  rule('W', 'watts?'),
  exact('W', 'W'),
  rule('kohm', 'kohms?|kω|kΩ|kilohms?'),
  rule('ohm', 'ohms?|ω|Ω'),
  rule('uF', '[µμu]f|microfarads?'),
  rule('hp', 'hp|bhp|horse ?power'),
  rule('kg', 'kgs?|kilos?|kilograms?|kilogrammes?'),
  rule('g', 'g|gr|grams?|grammes?'),
  rule('t', 'tonnes?'),
  rule('ton', 'tons?'),
  rule('cwt', 'hundredweights?|cwt'),
  rule('lb', 'lbs?'),
  rule('oz', 'oz|ounces?'),
  rule('h', 'h|hrs?|hours?'),
  rule('min', 'mins?|minutes?'),
  rule('s', 'secs?|seconds?'),
  exact('s', 's'),
  rule('turn', '(?:full |complete |whole )?turns?'),
  rule('teeth', 'teeth|tooth|t(?= sprocket)'),
  rule('%', '%|per ?cent'),
  rule('N', 'newtons?'),
  exact('m', 'm'),
  rule('m', 'met(?:re|er)s?'),
  rule('EUR', 'eur|euros?|€'),
  rule('GBP', 'gbp|quid|sterling|£'),
  rule('USD', 'usd|dollars?|bucks?|\\$'),
  rule('CZK', 'czk|kč|kc|czech crowns?|crowns|korunas?|koruny?'),
  rule('JPY', 'jpy|yen|¥'),
  rule('pounds', 'pounds?(?! (?:per|to the|a) square)'),
  rule('pence', 'pence'),
  close('pence', 'p'),
  rule('cents', 'cents?'),
];

export const MONEY = new Set(['EUR', 'GBP', 'USD', 'CZK', 'JPY']);
export const SIGNS: Readonly<Record<string, string>> = { '£': 'GBP', '€': 'EUR', $: 'USD', '¥': 'JPY' };

/** One word that stands for two or more measures that differ. */
export const UNCERTAIN: Readonly<Record<string, { imperial: string; US: string }>> = {
  gal: { imperial: 'imp gal', US: 'US gal' },
  pt: { imperial: 'imp pt', US: 'US pt' },
  qt: { imperial: 'imp qt', US: 'US qt' },
  'fl oz': { imperial: 'imp fl oz', US: 'US fl oz' },
  mpg: { imperial: 'imp mpg', US: 'US mpg' },
  ton: { imperial: 'long ton', US: 'short ton' },
};
