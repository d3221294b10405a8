// Sets a bed out beside the page, one seed after the other, so that the screen never waits.
import { type Layout, type LayoutInput, layoutFromSeed } from "@/lib/ground/layout";

export type LayoutAsk = { readonly input: LayoutInput; readonly seeds: readonly number[] };

self.onmessage = (event: MessageEvent<LayoutAsk>) => {
  for (const seed of event.data.seeds) self.postMessage(layoutFromSeed(event.data.input, seed) satisfies Layout);
};
