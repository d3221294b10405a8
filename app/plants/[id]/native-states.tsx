import { SourceMark } from "./source-mark";

type Props = {
  readonly native: { readonly native: readonly string[]; readonly introduced: readonly string[] } | null;
  readonly state: string | null;
  readonly isSelection: boolean;
  readonly source: string;
};

/** Where its species is at home. */
export function NativeStates({ native, state, isSelection, source }: Props) {
  if (!native) return null;
  const here =
    state === null ? "" : native.native.includes(state) ? `Native to ${state}.` : native.introduced.includes(state) ? `Introduced in ${state}.` : `Not on record in ${state}.`;
  return (
    <div className="fact-group">
      <h2>Native range</h2>
      <p>
        <b>{here}</b> <SourceMark source={source}>{native.native.length ? "Native to" : "Native to none of the states"}</SourceMark>
        {native.native.length ? ` ${native.native.join(" ")}` : ""}
        {native.introduced.length ? <span className="soft">; introduced in {native.introduced.join(" ")}</span> : null}.
        {isSelection && native.native.length ? <span className="soft"> This is a garden selection of the species.</span> : null}
      </p>
    </div>
  );
}
