/** Greetings, farewells and talk to those who watch: kept, but neither work nor finding. */
const CHATTER =
  /\b(?:hello|hi (?:all|everyone|folks|there)|good (?:morning|evening|afternoon)|welcome back|see you (?:next|then|soon|later|all)|bye|that'?s (?:all|it) (?:for (?:today|tonight|now|this)|from me|folks)|thanks for (?:watching|reading|listening)|until next time|same time next|like and|leave a comment|in the comments|subscribe|more next (?:time|week)|good ?night|kettle'?s on|time for (?:tea|a tea|a cup|bed)|take care|mind how you go)\b/i;

export const isChatter = (text: string, tells: boolean): boolean => !tells && CHATTER.test(text);
