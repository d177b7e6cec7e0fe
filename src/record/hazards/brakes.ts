import type { Hazard } from './hazard.ts';
import {
  CALL_AMBULANCE,
  CLOSED_ROAD,
  CLOTHES_APART,
  NO_EATING,
  RINSE_EYES,
  RINSE_SKIN,
  SWALLOWED,
} from './shared.ts';
import { ASBESTOS_EPA, ASBESTOS_OSHA, PRACTICE } from './sources.ts';

export const brakeHazards: Hazard[] = [
  {
    id: 'brake-dust',
    signal: 'WARNING',
    title: 'Brake and clutch dust, old gaskets: asbestos',
    symbol: 'dust',
    harm: 'Lung disease and cancer, ten to forty years later. Old linings, clutch facings, gaskets, lagging and rope seals may hold asbestos, and nobody can tell by looking.',
    avoid: [
      'Treat every lining, facing and gasket of unknown make as asbestos; have a sample tested by a laboratory if you want to know.',
      'Never blow, brush, sand or grind it dry. Wet it with a fine mist, wipe with a damp cloth, bag cloth and dust, seal and label the bag.',
      'No household vacuum cleaner: it blows the fibres out.',
      NO_EATING,
      CLOTHES_APART,
    ],
    wear: ['dust-mask', 'chemical-gloves', 'overalls'],
    ifItHappens: [
      'Dust in the air: hold your breath, leave, let it settle for hours, wet the floor and wipe it.',
      'Shower and wash your hair; tell your doctor if it was much.',
    ],
    callLicensed:
      'Leave it to a workshop with an enclosure or wet-cleaning plant where you can; riveting, grinding and disposal follow local asbestos law.',
    defersTo: 'local asbestos law and the lining maker’s data',
    sources: [ASBESTOS_EPA, ASBESTOS_OSHA],
    words: [
      'asbestos|millboard|friction dust|brake dust|lining dust|clutch dust',
      '@lining + dust|sand|sanded|file|glaze|rivet|chamfer|grind|old|original|brush|clean|blow|wipe|scrape|break|take|off|worn|relin|know|sort|unknown|wear|glue|bond|fit|new|asbestos|facing|shoe|swap|renew|oil|soak|inspect|adjust lining|thick|thickness|rub|emery|score - seat lining|drawer|felt|boot lining|lining of seat|headlining|@money|bedded|order',
      'brake shoe|brake drum|back plate|backplate|backing plate|brake shoes|clutch plate|clutch cover|bellhousing|bell housing + dust|off|clean|wipe|brush|blow|air|damp|sand|glaze|inside|scored|unhook|remove|pull|score|open|strip|take|asbestos|rag - @money|smoke|smoking|degrees|hot drum|torque|bolts i could not find|adjust',
      'drum off|drums off|drum came off|drum inside|pull drum|drum + dust|damp rag|clean|wipe|blow|brush|grey|gray|shoes|lining|scored|off - oil drum|drum roll|drummer|torque|turned|lathe|hot|smoke',
      'shoe|shoes + glaze|sand|rivet|lining|brake|dust|hub|wipe|off|unhook - my shoes|safety shoe|pole shoe|leather|shoe box',
      'dust + brake|clutch|drum|lining|back plate|lap|asbestos|bell housing|facing|shoes - settled on argument|@paint|lead|argument',
      'damp rag bag it|damp rag bag|bag it|no brushing dry|no blowing out|bad sort',
      'exhaust rope|rope seal|exhaust wrap|lagging|fluffy|heat wrap|exhaust joint|exhaust gasket|head gasket|old gasket|gasket + asbestos|scrape|scraped|crumble|crumbled|fluffy|rope|fibre|fiber|white stuff|lagging|dry|sand|wire brush|chip - gasket paper|gasket face with|new gasket|liquid gasket|copper',
    ],
  },
  {
    id: 'brake-fluid',
    signal: 'CAUTION',
    title: 'Brake fluid',
    symbol: 'drop',
    harm: 'Sore eyes and skin; it strips paint and, sprayed on a hot exhaust, burns. Wet or wrong fluid boils and takes the brakes away.',
    avoid: [
      'Hose on the bleed nipple into a jar; cover paint, and rinse splashes with water at once.',
      'Only the kind that the vehicle’s maker names, from a sealed bottle; never reuse bled fluid or mix kinds.',
      'Keep it away from children and from drink bottles.',
    ],
    wear: ['goggles', 'chemical-gloves'],
    ifItHappens: [RINSE_EYES, RINSE_SKIN, SWALLOWED],
    callLicensed:
      'Stop if the pedal is not hard after bleeding: do not drive it; a licensed workshop finds the air or the leak.',
    defersTo: 'the vehicle maker’s fluid and the label on the bottle',
    sources: [PRACTICE('Covered paint, sealed bottle, hose into a jar')],
    words: [
      'brake fluid|dot 3|dot 4|dot 5|dot3|dot4|dot5|master cylinder|bleed nipple|bleed screw|brake bleed|bleed brake|hydraulic fluid|brake reservoir|bleeder',
      'bleed|bled|bleeding + brake|brakes|rear|front|nipple|bubble|jar|pedal|wheel|furthest|line|system|caliper|fluid|air|hose - budget|bleeding finger|hand|knuckle|cut|radiator|diesel|fuel|thumb|plaster',
      'fluid + brake|wheel cylinder|nipple|reservoir|pedal|caliper|pipe|union|weep|leak|top up|squirt|dot|flexi - easy start fluid|starting fluid|washer fluid|gearbox|cutting',
      'wheel cylinder|caliper|calliper|flexi hose|flexi|brake pipe|brake hose|brake line + leak|weep|fluid|piston|pop|union|open|undo|new|renew|off|seal|push|rust|perished',
      'pump pedal|pump brake|pump three times + bleed|open|hold|close|jar|reservoir',
    ],
  },
  {
    id: 'failed-brakes',
    signal: 'WARNING',
    title: 'Brakes that fail or are not proved',
    symbol: 'stop',
    harm: 'Death or injury of you and of others who had no say. Brakes that were opened, adjusted, oiled or leaking may not stop the vehicle.',
    avoid: [
      'Do not drive it, not even down the drive, until every brake part is fitted, locked with new split pins, adjusted and bled hard.',
      'Prove them standing, then at walking pace on level private ground with a second way of stopping; only then go on.',
      'Renew linings soaked in oil or fluid, rusted pipes and perished hoses; never patch them.',
      'Chock the wheels whenever a brake is open.',
      CLOSED_ROAD,
    ],
    wear: [],
    ifItHappens: [
      'Pedal sinks: pump it, handbrake on gently, down through the gears, steer for an upward slope or a soft verge.',
      CALL_AMBULANCE,
    ],
    callLicensed:
      'Have brake work looked over, and the brakes measured, by a licensed workshop before the first use on a road.',
    defersTo: 'the vehicle maker’s brake data and the inspection authority',
    sources: [PRACTICE('Brakes proved at walking pace on private ground first')],
    words: [
      'no brakes|without brakes|brakes failed|brake failure|brakes not connected|no brake|brakes gone|brake fade|brakes do not work|brakes disconnected|brakeless|spongy|brakes connected',
      'brake|pedal|handbrake|hand brake|parking brake|brakes + floor|sink|spongy|soft|leak|fail|not hold|hold|pull|slack|fade|weak|poor|soaked|grease|rust|perished|bed|bedded|adjust|adjuster|connect|stop|through|let go|no|cable|rod|clevis|split pin|pin|shoe|bleed|drag|bind|click|wheel cylinder|seize|length - brake cleaner|brake on progress|customs|press brake|brake test bench|@money|brakes off paint|off oil|get oil off|clutch pedal soft|@paper|brake horsepower|brake dust|handbrake on|brake on and|chock|heat|smoking|down hill engine',
      'bleed|bled + brake|brakes|rear|front|nipple|bubble|pedal - budget|finger|hand|knuckle|radiator|diesel',
      'brake pipe|brake line|brake hose|brake cable|brake rod|brake linkage|brake lever|flexi hose|wheel cylinder|master cylinder|brake shoe|brake lining|brake adjuster|brake shoes|brake pedal|brake light switch + leak|rust|perished|weep|slacken|off|remove|new|renew|fit|undo|adjust|stretch|fray|split pin|wire|no|union|seize|replace|cut|mark|bedded|cup|bed in|burst|let go|corroded|disconnect|rebuild|hone|seal - order|@money|sand|glaze|dust',
      'split pin|cotter pin|clevis + brake|wire|nail|no|missing|rod|hub|hub nut|castle nut|without - box|count|@money',
      'lining|shoes + bed in|bedded|soaked|oil|grease|new shoes|relined|fitted|stop|adjust - drawer|seat',
      'pedal + floor|sink|sinks|second push|soft|hard|spongy|pump - piano|bike|cycle',
      'three lengths|takes to stop|stopping distance|does not stop|will not stop|would not stop|not stop in time|pulls left|pulls right|pulls hard|pull to left|pull to right + brake|stop|yard|lane|drum|hill',
    ],
  },
];
