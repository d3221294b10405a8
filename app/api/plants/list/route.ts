import { plantListResponse } from "@/lib/server/plant-list-response";

export const dynamic = "force-dynamic";

/** GET ?mark=…: all plants in the compact form of lib/plants/plant-list.ts. */
export function GET(request: Request): Promise<Response> {
  return plantListResponse(new URL(request.url).searchParams.get("mark"), request.headers.get("if-none-match"));
}
