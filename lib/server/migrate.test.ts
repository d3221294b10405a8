import { describe, expect, it } from "vitest";
import { sqlStatements } from "./migrate";

describe("sqlStatements", () => {
  it("leaves strings, comments and triggers whole", () => {
    expect(sqlStatements("-- a;b\nCREATE TABLE t(a TEXT DEFAULT ';');INSERT INTO t VALUES('it''s;');")).toHaveLength(2);
    expect(sqlStatements("CREATE TRIGGER x AFTER INSERT ON t BEGIN SELECT CASE WHEN 1 THEN 2 END; DELETE FROM t; END; SELECT 1;")).toHaveLength(2);
  });
});
