/** The parts of wink-nlp that its tables are read with; the library declares its front door alone. */
declare module 'wink-nlp/src/cache.js' {
  import type { WinkCache } from './inside-wink.ts';
  export default function cache(core: object, features: unknown): WinkCache;
}
declare module 'wink-nlp/src/compile-trex.js' {
  export default function compileTRex(trex: unknown): object;
}
declare module 'wink-nlp/src/dd-wrapper.js' {
  import type { WinkDocument, WinkWriter } from './inside-wink.ts';
  export default function wrapper(document: WinkDocument): WinkWriter;
}
declare module 'wink-nlp/src/tokenizer.js' {
  import type { WinkWriter } from './inside-wink.ts';
  export default function tokenizer(
    trex: object,
    categories: unknown,
    preserve: unknown,
  ): (writer: WinkWriter, text: string) => void;
}
