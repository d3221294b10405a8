"use client";

import { useEffect, useId, useRef, useState } from "react";

/**
 * A field that keeps what was typed on Enter or when left, and goes back on Esc. `read` turns the text into a value or says what is wrong;
 * a wrong text stays in the field with the reason under it, and the value stays as it was. An answer that comes while more is being typed is not put over it.
 */
export function TextField<T>({
  label,
  text,
  read,
  keep,
  className,
  placeholder,
  inputMode,
  list,
}: {
  label: string;
  text: string;
  read: (typed: string) => { ok: true; value: T } | { ok: false; fault: string };
  keep: (value: T) => void;
  className?: string;
  placeholder?: string;
  inputMode?: "text" | "numeric" | "decimal";
  list?: string;
}) {
  const [typed, setTyped] = useState(text);
  const [fault, setFault] = useState<string | null>(null);
  const errorId = useId();
  const field = useRef<HTMLInputElement>(null);
  const cancelled = useRef(false);
  // Typed since it was last kept: the answer to what was kept before must not be put over it.
  const typing = useRef(false);
  // What was given to `keep` and has not come back as `text` yet.
  const kept = useRef<string | null>(null);
  const settle = (left: boolean) => {
    if (cancelled.current) {
      cancelled.current = false;
      return;
    }
    const known = kept.current ?? text;
    if (typed === text && typed === known) {
      typing.current = false;
      setFault(null);
      return;
    }
    if (left && typed === kept.current) return;
    const result = read(typed.trim());
    if (result.ok) {
      typing.current = false;
      kept.current = typed;
      setFault(null);
      keep(result.value);
    } else setFault(result.fault);
  };
  useEffect(() => {
    kept.current = null;
    if (typing.current && document.activeElement === field.current) return;
    typing.current = false;
    setTyped(text);
    setFault(null);
  }, [text]);
  return (
    <>
      <input
        ref={field}
        aria-label={label}
        aria-invalid={fault !== null}
        aria-describedby={fault ? errorId : undefined}
        className={className}
        value={typed}
        placeholder={placeholder}
        inputMode={inputMode}
        list={list}
        onChange={(event) => {
          typing.current = true;
          setTyped(event.target.value);
        }}
        onBlur={() => settle(true)}
        onKeyDown={(event) => {
          if (event.key === "Enter") {
            event.preventDefault();
            settle(false);
          }
          if (event.key === "Escape") {
            cancelled.current = true;
            typing.current = false;
            kept.current = null;
            setTyped(text);
            setFault(null);
            event.currentTarget.blur();
          }
        }}
      />
      {fault ? (
        <span id={errorId} role="alert" className="alert small field-fault">
          {fault}
        </span>
      ) : null}
    </>
  );
}
