import type { Metadata } from "next";
import { NORMALS_PERIOD } from "@/lib/place/station";
import { datasetSources } from "@/lib/server/dataset-files";
import { taxaHeld } from "@/lib/server/taxa";

export const metadata: Metadata = { title: "Data and cautions" };
export const dynamic = "force-dynamic";

const CAUTIONS = [
  ["Before digging", "Call 811 a few days ahead and have buried lines marked; keep to hand tools near the marks."],
  ["Overhead lines", "Choose trees by their mature height: under and beside lines only small ones, as the utility and the local code say."],
  ["Corners and drives", "Keep sight triangles clear to the height that the local code sets."],
  ["Poisonous and thorny plants", "They are noted in a bed's findings, as far as the dataset knows. Tell the client; keep them from children, dogs, cats and horses."],
  ["Lifting", "One person lifts to about 50 lb (after the 51 lb of the NIOSH lifting equation), two to about 100 lb, a machine above."],
  ["Regulated plants", "Sale and planting are barred by state lists that change. What the dataset knows carries its list and date; where it says nothing, ask the state."],
  ["What this does not replace", "Local code, the utility's rules, and the judgment of licensed landscape architects, arborists and pesticide applicators."],
] as const;

export default async function AboutPage() {
  const sources = Object.entries(datasetSources());
  const { taxa } = await taxaHeld();
  return (
    <main id="main" className="sheet">
      <div className="sheet-head">
        <h1>Data and cautions</h1>
      </div>
      <section aria-labelledby="cautions-title">
        <h2 id="cautions-title">Cautions</h2>
        <table>
          <tbody>
            {CAUTIONS.map(([what, words]) => (
              <tr key={what}>
                <th scope="row">{what}</th>
                <td>{words}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <section aria-labelledby="places-title">
        <h2 id="places-title">Places</h2>
        <p>
          Hardiness zones by ZIP code: USDA Agricultural Research Service and PRISM Climate Group, Oregon State University, 2023. <b>This is not the official map.</b> ZIP codes: US
          Census Bureau. Temperatures, freeze dates and rain: NOAA US Climate Normals {NORMALS_PERIOD}. No newer table could be had; spring has moved on since in most places.
        </p>
      </section>
      <section aria-labelledby="plants-title">
        <h2 id="plants-title">Plants</h2>
        <p>
          The open plant dataset holds {taxa.length.toLocaleString("en-US")} taxa and is licensed CC BY 4.0. Every value names its source; most are common practice, written from
          memory, and say so. Windows are written for Wooster, Ohio, and carried to each place by accumulated warmth, day length and the fall of autumn temperatures.
        </p>
        <table>
          <thead>
            <tr>
              <th scope="col">Key</th>
              <th scope="col">Source</th>
              <th scope="col">By</th>
              <th scope="col">License</th>
            </tr>
          </thead>
          <tbody>
            {sources.map(([key, source]) => (
              <tr key={key}>
                <th scope="row">{key}</th>
                <td>
                  {source.title}
                  {source.year ? `, ${source.year}` : ""}
                  {source.note ? `. ${source.note}` : ""}
                </td>
                <td>{source.by}</td>
                <td>{source.licence}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </main>
  );
}
