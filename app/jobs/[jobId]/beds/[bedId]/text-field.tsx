"use client";

import { useEffect, useId, useRef, useState } from "react";

/**
 * A field that keeps what was typed on Enter or when left, and goes back on Esc. `read` turns the text into a value or says what is wrong;
 * a wrong text stays in the field with the reason under it, and the value stays as it was.
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
  const cancelled = useRef(false);
  useEffect(() => {
    setTyped(text);
    setFault(null);
  }, [text]);
  const settle = () => {
    if (cancelled.current) {
      cancelled.current = false;
      return;
    }
    if (typed === text) {
      setFault(null);
      return;
    }
    const result = read(typed.trim());
    if (result.ok) {
      setFault(null);
      keep(result.value);
    } else setFault(result.fault);
  };
  return (
    <>
      <input
        aria-label={label}
        aria-invalid={fault !== null}
        aria-describedby={fault ? errorId : undefined}
        className={className}
        value={typed}
        placeholder={placeholder}
        inputMode={inputMode}
        list={list}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={settle}
        onKeyDown={(event) => {
          if (event.key === "Enter") {
            event.preventDefault();
            settle();
          }
          if (event.key === "Escape") {
            cancelled.current = true;
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
