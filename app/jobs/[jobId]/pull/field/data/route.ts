import { fieldSnapshot } from "@/lib/server/field-snapshot";
import { pullEventsReceive } from "@/lib/server/pull-events";

type Params = { params: Promise<{ jobId: string }> };
const BODY_MAX = 20_000_000;

async function answered(jobId: string): Promise<Response> {
  const snapshot = await fieldSnapshot(jobId);
  return snapshot ? Response.json(snapshot, { headers: { "cache-control": "no-store" } }) : Response.json({ message: "This job is no longer there." }, { status: 404 });
}

/** The list as it stands. */
export async function GET(_request: Request, { params }: Params): Promise<Response> {
  return answered((await params).jobId);
}

/** Takes what a phone has recorded, and answers with the list as it then stands. */
export async function POST(request: Request, { params }: Params): Promise<Response> {
  const { jobId } = await params;
  const text = await request.text();
  if (text.length > BODY_MAX) return Response.json({ message: "Too many pictures at once." }, { status: 413 });
  let events: unknown;
  try {
    events = JSON.parse(text);
  } catch {
    return Response.json({ message: "What the phone sent cannot be read." }, { status: 400 });
  }
  const answer = await pullEventsReceive(jobId, events);
  return answer.kind === "fault" ? Response.json({ message: answer.message }, { status: 400 }) : answered(jobId);
}
