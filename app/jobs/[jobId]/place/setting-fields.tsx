import { MICROCLIMATES, SITE_SHIFTS, WARMINGS_F } from "@/lib/place/microclimate";
import type { PlaceSetting } from "@/lib/place/setting";
import { SPRINGS, type Spring } from "@/lib/place/spring";

const SPRING_WORDS: Readonly<Record<Spring, string>> = {
  mild: "mild: as early as one year in six",
  normal: "as springs go",
  hard: "hard: as late as one year in six",
};
const warmingWords = (degreesF: number) => (degreesF === 0 ? "as in the normals" : `+${degreesF} °F in every month`);
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function Choice({ name, value, chosen, words }: { name: keyof PlaceSetting; value: string; chosen: boolean; words: string }) {
  return (
    <label className="check">
      <input type="radio" name={name} value={value} defaultChecked={chosen} /> <span>{words}</span>
    </label>
  );
}

/** What of the site is not in its ZIP's normals, with the amount of each choice. */
export function SettingFields({ setting }: { setting: PlaceSetting }) {
  return (
    <>
      <fieldset className="choices">
        <legend>The spot</legend>
        {MICROCLIMATES.map((spot) => (
          <Choice key={spot} name="microclimate" value={spot} chosen={setting.microclimate === spot} words={`${capital(spot)}. ${SITE_SHIFTS[spot].words}`} />
        ))}
        <p className="soft small">These amounts are common practice, no source. A zone set by hand stays as it is.</p>
      </fieldset>
      <fieldset className="choices">
        <legend>The climate to plan for</legend>
        {WARMINGS_F.map((degreesF) => (
          <Choice key={degreesF} name="warmingF" value={String(degreesF)} chosen={setting.warmingF === degreesF} words={capital(warmingWords(degreesF))} />
        ))}
        <p className="soft small">Moves every date; the hardiness zone stays, it goes by the years that were.</p>
      </fieldset>
      <fieldset className="choices">
        <legend>The spring to plan for</legend>
        {SPRINGS.map((spring) => (
          <Choice key={spring} name="spring" value={spring} chosen={setting.spring === spring} words={capital(SPRING_WORDS[spring])} />
        ))}
      </fieldset>
    </>
  );
}
