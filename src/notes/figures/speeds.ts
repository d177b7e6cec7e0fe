/** A bare number that is a speed: "fifty on the level", "from about 40 there's a whine". */
import type { Candidate } from './figure.ts';
import { counts } from './standing.ts';
import { around, type Token } from './tokens.ts';

const GOES_BEHIND =
  /^ (?:gps|on gps|on the gps|by (?:the )?(?:satellite|gps|phone|speedo|speedometer|clock|needle)|on the (?:level|flat|clock|speedo|straight|dial)|indicated|flat out|downhill|uphill|up hill|down hill|at the (?:bottom|top)|in (?:top|third|second|first)|up the|down the|along the)/;
const GOES_BEFORE =
  / (?:doing|reads|reading|showing|shows|showed|says|indicated|clocked|pulls it at|pulls|needle at|needle on|speed of|flat out at|flat out it's|average of|averaged|cruises at|cruise at|cruising at|settles at|sits at|holds|got to|reached|up to|under|over|past|between|and|at|to|about|about) $/;
const DRIVING =
  / (?:shakes|shake|vibrates|vibration|buzz|buzzes|wobble|wobbles|whine|whines|drone|brake|braking|brakes|breaks|acceleration|slowing|slow|slowed|speed|speedo|speedometer|gear|hill|road|lane|level|drive|driving|drove|flat out|needle|clock|climb|downhill|uphill|straight|cruise|cruises|cruising|motorway|bypass|throttle|satellite|kilometre|overrun|tucked|flat|overtook|overtaken|limit) /;

/** "four bolts": a noun behind a whole number is counted by it. */
function counted(tokens: readonly Token[], one: Candidate): boolean {
  const next = tokens[one.to];
  if (next?.kind !== 'word' || next.gap > 1) return false;
  return (
    next.gap === 0 ||
    (/[^s']s$/.test(next.text) &&
      next.text.length > 3 &&
      !/^(?:goes|says|reads|this|less|across|plus|wants|always)$/.test(next.text)) ||
    /^(?:times|of|off|more|hundred|thousand)$/.test(next.text)
  );
}

const AT_SPEED =
  / (?:at|from|to|than|past|beyond|over|above|under|below) (?:about |nearly |around |maybe )?$/;
/** Where one of these is near, a bare number may be anything. */
const OTHERWISE =
  / (?:thermometer|temperature|temperature's|temp|gauge|degrees|water|hot|boil|header|cap|rpm|revs|rev|volt|volts|bar|psi|tyres|tyre|clearance|torque|washer|gap|mm|millimetres|minutes|minute|hour|hours|tooth|teeth) /;

/** In a text that gives speeds, "from about 40 there's a whine" is one. */
export function speedOf(tokens: readonly Token[], one: Candidate, driven: boolean): boolean {
  const behind = around(tokens, one.to, one.to + 3);
  const before = around(tokens, one.from - 3, one.from);
  if (!DRIVING.test(around(tokens, one.from - 22, one.to + 14))) return false;
  if (
    / (?:water|water's|temperature|temp|thermometer|coolant|oil) /.test(
      around(tokens, one.from - 7, one.from),
    ) ||
    / (?:tyre|tyres|tire|tires|psi|bar|volts) /.test(around(tokens, one.from - 4, one.to + 2))
  )
    return false;
  if (
    driven &&
    / (?:stops|stop|stopped|stopping|braked|braking|brakes|pulled up|pulls up) from (?:about |nearly )?$/.test(
      before,
    )
  )
    return true;
  if (GOES_BEHIND.test(behind)) return true;
  if (counted(tokens, one) || counts(tokens, one)) return false;
  if (
    driven &&
    one.value >= 13 &&
    AT_SPEED.test(before) &&
    !OTHERWISE.test(around(tokens, one.from - 16, one.to + 6)) &&
    !/^ (?:past|to|o'clock|per|percent) /.test(behind)
  )
    return true;
  return (
    / (?:doing|do|does|did|speed of|flat out at|average of|averaged|slowing down to|slow down to|slowed to|slowed down to|cruises at|cruising at|clocked|speedo says|speedo reads|speedo shows|needle at|needle on|clock says|clock shows|it shows|it showed) (?:about |nearly |a )?$/.test(
      before,
    ) ||
    (GOES_BEFORE.test(before) &&
      /^ (?:at the|and|on|so|indicated|which|it|in|but|then|now|with|i)? ?/.test(behind) &&
      / (?:speedo|speedometer|needle|flat out|km|mph|indicated|average) /.test(
        around(tokens, one.from - 14, one.to + 10),
      ))
  );
}
