import type { Hazard } from './hazard.ts';
import { CALL_AMBULANCE, CLOSED_ROAD, ROAD_LEGAL, SECOND_PERSON } from './shared.ts';
import { PRACTICE } from './sources.ts';

const roadLaw = 'traffic law, the inspection authority and your insurer';

export const roadHazards: Hazard[] = [
  {
    id: 'road-test',
    signal: 'WARNING',
    title: 'Road test of an unproven vehicle',
    symbol: 'road',
    harm: 'A collision or overturning. Brakes, steering, wheels and engine that have never worked together fail without warning; a three-wheeler tips in a bend.',
    avoid: [
      'Before it moves: brakes, steering, wheel nuts, tyres, lights, throttle return and a way to stop the engine, each checked by a second person.',
      CLOSED_ROAD,
      ROAD_LEGAL,
      'Slowly, alone or with the one helper who is needed, belted or helmeted as the vehicle allows; stop after a few hundred metres and feel hubs, brakes and nuts.',
      'No open fault that forbids driving; no figure on this site says that a vehicle is fit for the road.',
      SECOND_PERSON,
    ],
    wear: ['bright-vest'],
    ifItHappens: [
      'Stop off the road, engine and fuel off, everybody out on the side away from traffic.',
      'Warning triangle, vest, ' + 'and call for recovery.',
      CALL_AMBULANCE,
    ],
    callLicensed:
      'An inspection by a licensed workshop or the authority comes before the first mile on a public road.',
    defersTo: roadLaw,
    sources: [
      PRACTICE('Short, slow, empty road, second person, nuts checked after the first few hundred metres'),
    ],
    words: [
      'test drive|road test|roadtest|first drive|shakedown|shake down|maiden drive|maiden voyage|first run|first trip|test run|shakedown run|trial run|first outing|proving run|coast down|coastdown|test ride - compression|@paper',
      '@driveword + road|lane|hill|block|chapel|village|field|yard|kilometre|km|mile|round|town|back|drum|up to|pass|roundabout|street|first time|highway|motorway|stopwatch|speed|#speed|speedo|gear|second gear|top gear|brakes|test - post office|@paper|screwdriver|drive shaft|drive chain|drive belt|drive out|drive bearing|post|bus|disk|drift|drive pin|van den|rain|lorry drove|shop|fetch|collect',
      'take her out|took her out|took it out|take it out|took him out|spin round|quick spin|round block|up road|down road|out on road|on the road|back on road|up and down lane|round lane|up lane|down lane|round field - drain|bearing out|took it out of|circlip|plug|bolt|tank|post|drum',
      'run in|running in + #speed|km|miles|kilometre|speed|mile - bush|paper',
      '#speed + hill|gear|lane|road|second|third|top|test|stopwatch|flat|fast|run|drive|wobble|shake|speedo|gradient|climb|steady|steering|motor way|mph|round - wind|fan|rain|gust|speed of sound',
      'steering|wobble|shimmy|kingpin|pull left + road|drive|lane|wheelbarrow|speed|bend|corner|wander - drawing|box|@money|not doing',
      'stopwatch|passenger|speedometer|speedo + hill|gear|lane|road|climb|knee|speed|run|drive|gradient - glass|order|cable|@money|stamp|bulb|zero',
    ],
  },
  {
    id: 'slow-vehicle',
    signal: 'WARNING',
    title: 'A slow vehicle on a fast road',
    symbol: 'road',
    harm: 'Run into from behind. Traffic closes on a slow vehicle faster than its drivers judge, worst at night, in rain and over a crest.',
    avoid: [
      'Choose roads without fast traffic; no dual carriageway or motorway, no dusk, no fog.',
      'Lights on; working brake lamps and indicators; a slow-vehicle plate or beacon where the law gives one.',
      'Pull in where it is wide and level, often, and let them by; never wave anybody past.',
      ROAD_LEGAL,
    ],
    wear: ['bright-vest'],
    ifItHappens: [
      'Broken down: off the road, everybody out behind the barrier, triangle well back, call recovery.',
      CALL_AMBULANCE,
    ],
    callLicensed: 'Ask the authority whether the vehicle may use the road at its speed at all.',
    defersTo: roadLaw,
    sources: [PRACTICE('Roads without fast traffic, pull in often')],
    words: [
      'dual carriageway|motorway|highway|freeway|interstate|trunk road|main road|autobahn|expressway|bypass|fast road|busy road|arterial + @driveword|flat out|mph|slow|#speed|traffic|lorry|lorries|truck|pace|hill|queue|behind|everybody|let by|lay by|signal|km|mile|crawl|pull in|thirty|forty|out on - @paper|noise of|beside',
      'queue|tailback|tail back|line of cars|string of cars|procession + behind|cars|up|hill|pass|traffic|us|me|lorry - post office|customs|counter|shop|bank',
      'lorries|lorry|truck|trucks|cars|traffic|bus|coach|hgv + behind|overtake|overtook|past|by|up my|close|horn|hoot|flash|breathing - @paper|model|behind shed|parked|tow',
      'walking pace|crawling|crawled|flat out|slow vehicle|slowest|held up traffic|holding up traffic|hold up traffic|let traffic by|let traffic|let them by|hazard lights|slow moving + hill|road|traffic|up|indicator|mile|lane|lorry|van|carriageway|second|cars|signal|everyone|everybody - under|beneath',
      'indicator|indicators|brake light|brake lights|hand signal|hand signals|tail lamp|tail light + road|not work|traffic|hill|pace|dark|night|behind|drive - glow|dial|switch off|clock|order|wire|bench|@paper',
    ],
  },
  {
    id: 'filming-driving',
    signal: 'WARNING',
    title: 'Filming while driving',
    symbol: 'camera',
    harm: 'A collision while you look at the screen or hold the camera. Two seconds of looking away is blind driving.',
    avoid: [
      'The driver does not film, hold, start or look at a camera or phone; narrate afterwards.',
      'A passenger films, or a camera fixed before you set off, out of your sight and clear of controls and view.',
      'No retakes in traffic; stop off the road to change anything.',
    ],
    wear: [],
    ifItHappens: ['Camera loose or fallen: leave it; stop off the road first.', CALL_AMBULANCE],
    callLicensed: 'Filming that needs a road closed or a follow car needs the authority’s leave.',
    defersTo: 'traffic law on phones, screens and cameras in vehicles',
    sources: [PRACTICE('The driver never touches the camera')],
    words: [
      'film|filmed|filming|camera|phone|video|record|recording|mic|selfie|gopro|vlog|live stream|tripod|footage|screen + @driveword|dash|windscreen|windshield|speedo|bar|handlebar|climb|road|hill|way down|wheel|window|lane|eyes|one hand|turning - film about wiring|oil film|film of oil|cling film|thin film|video is out|drive to|post office|hard drive|flywheel|wheel off|scan|grease film|record player|on record|service record|drawing|photograph|behind|drive out|press play|recording of bearing|wheel bearing|oil film|film over',
      'narrate|narrated|talking to camera|one handed|one hand on wheel|one hand on bar|eyes off road|eyes on screen + drive|camera|film|phone|wheel|bar|screen|mic',
    ],
  },
  {
    id: 'towing',
    signal: 'WARNING',
    title: 'Towing, pushing and coasting',
    symbol: 'tow',
    harm: 'A rope that snaps like a whip, a vehicle that runs into the tug or over a foot. Coasting without the engine you lose braking and perhaps steering.',
    avoid: [
      'Rated rope or bar on the maker’s towing points, checked; nobody beside or between when it comes tight.',
      'A driver in each vehicle, signals agreed, walking pace to begin with; brakes and steering of the towed one proved, or a trailer.',
      'Bump start or coast only on level private ground with working brakes, nobody in front.',
      'On a trailer: winch from the side, straps at four corners, chocks, weight forward.',
      ROAD_LEGAL,
    ],
    wear: ['work-gloves', 'bright-vest', 'safety-shoes'],
    ifItHappens: ['Let it go: never step between a rolling vehicle and anything.', CALL_AMBULANCE],
    callLicensed: 'A vehicle without brakes or steering goes on a recovery lorry.',
    defersTo: `the towing points and limits of both makers and ${roadLaw}`,
    sources: [PRACTICE('Rated rope, makers’ points, nobody beside it when it tightens')],
    words: [
      'tow|towed|towing|tow rope|tow bar|towbar|towline|tow strap|trailer|recovery strap|low loader - tow line|towed my doubts|@paper|tow the line|oakum|film trailer|towel|frame is|frame of|frame welded|a frame of reference|trailer for|order',
      'bump start|bump started|pull start|pull started|push start|push started|jump clutch|roll start|pushed down hill|push down hill|bump it|pull starter rope tractor',
      'push|pull|drag|haul + van|vehicle|hill|lane|yard|tractor|pick up|pickup|truck|drive + start|clutch|gear|rope|out|down|tractor|behind|fire|second - engine out|bearing|cable|puller|push rod|pushrod|pedal|rag|pulls left|pulls hard',
      'coast|coasted|coasting|freewheel|freewheeled|free wheel|free wheeling|roll down|rolled down|rolled down drive|rolled + hill|lane|neutral|engine off|drive|down|far - west coast|coast road|seaside|north coast|bearing|rolled up sleeve|oil|sleeve|paper|lathe|over pit|dial|roll call|bench|roll along paper',
      'winch|winched|strap|straps + trailer|van|lorry|ramp|corners|truck - tank strap|earth strap|engine|hoist|ground strap|crane|leather|watch|tank',
      'rope + tractor|axle|tow|pull|behind|van|pick up|car - rope seal|exhaust rope|price|strand|wire rope|starter rope|sling|engine',
    ],
  },
];
