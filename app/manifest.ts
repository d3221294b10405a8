import type { MetadataRoute } from "next";

/** Lets a phone install Twelvemonth on its home screen. */
export default function manifest(): MetadataRoute.Manifest {
  return {
    name: "Twelvemonth",
    short_name: "Twelvemonth",
    description: "Planting beds proven through the year, from plant list to pull list.",
    start_url: "/",
    display: "standalone",
    background_color: "#fcfbf6",
    theme_color: "#fcfbf6",
    icons: [{ src: "/icon.svg", sizes: "any", type: "image/svg+xml" }],
  };
}
