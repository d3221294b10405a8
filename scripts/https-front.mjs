// An https front for phones: browsers let a page work without a signal only over https. Takes requests with the firm's own certificate and hands them to the
// program behind it on this machine.
import { readFileSync } from "node:fs";
import { request } from "node:http";
import { createServer } from "node:https";

/** Hands one request to the program on a local port and its answer back. */
export function handedOn(port) {
  return (incoming, outgoing) => {
    const headers = { ...incoming.headers, "x-forwarded-proto": "https", "x-forwarded-host": incoming.headers.host ?? "" };
    const inner = request({ host: "127.0.0.1", port, method: incoming.method, path: incoming.url, headers }, (answer) => {
      outgoing.writeHead(answer.statusCode ?? 502, answer.headers);
      answer.pipe(outgoing);
    });
    inner.on("error", () => {
      if (!outgoing.headersSent) outgoing.writeHead(502, { "content-type": "text/plain" });
      outgoing.end("Twelvemonth does not answer.");
    });
    outgoing.on("close", () => inner.destroy());
    incoming.pipe(inner);
  };
}

/** Listens with a certificate and its key (PEM files). */
export function httpsFront({ host, port, innerPort, certFile, keyFile }) {
  return createServer({ cert: readFileSync(certFile), key: readFileSync(keyFile) }, handedOn(innerPort)).listen(port, host);
}
