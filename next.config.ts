import type { NextConfig } from "next";

const config: NextConfig = {
  serverExternalPackages: ["@libsql/client", "libsql", "@prisma/client", "@prisma/adapter-libsql", "@react-pdf/renderer", "exceljs"],
  devIndicators: false,
  // Types are checked by `npm run check`, tests included; a person starting the program need not wait for it.
  typescript: { ignoreBuildErrors: true },
  ...(process.env.NEXT_DIST ? { distDir: process.env.NEXT_DIST } : {}),
};
export default config;
