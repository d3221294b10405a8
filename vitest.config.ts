import path from "node:path";
import { defineConfig } from "vitest/config";

const alias = { "@": path.resolve(import.meta.dirname) };
const globalSetup = ["tests/support/base-database.ts"];
export default defineConfig({
  test: {
    projects: [
      {
        resolve: { alias },
        test: {
          name: "unit",
          globalSetup,
          include: ["lib/**/*.test.ts", "app/**/*.test.ts", "tests/outside/**/*.test.ts", "tests/headless/**/*.test.ts"],
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
      { resolve: { alias }, test: { name: "browser", globalSetup, include: ["tests/browser/**/*.test.ts"], testTimeout: 120_000, hookTimeout: 180_000, fileParallelism: false } },
    ],
  },
});
