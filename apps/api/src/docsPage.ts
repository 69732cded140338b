import { type ProblemName, problemNames, problemTypes, typeOf } from "@pith/contract";
import { html, raw } from "hono/html";

interface Operation {
  summary?: string;
  tags?: string[];
  parameters?: { name: string; in: string; required?: boolean }[];
  requestBody?: unknown;
  responses?: Record<string, { description?: string }>;
}

interface Document {
  info: { title: string; description?: string };
  paths?: Record<string, unknown>;
  components?: { schemas?: Record<string, unknown> };
}

/** What one kind of problem means and what to do: the page that its `type` leads to. */
export function problemPage(name: ProblemName) {
  const { status, title, help } = problemTypes[name];
  return html`<!doctype html><html lang="en"><head><meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1"><title>${title}</title>
<style>${raw(STYLE)}</style></head><body><main><h1>${title}</h1><p>${help}</p>
<p>Status ${status}. Type <code>${typeOf(name)}</code>.</p></main></body></html>`;
}

type Html = ReturnType<typeof html>;
const METHODS = ["get", "post", "patch", "put", "delete"] as const;

/** The OpenAPI document as a page for people: no script, no font or style from elsewhere, readable in print. */
export function docsPage(document: Document) {
  const byTag = new Map<string, Html[]>();
  for (const [path, item] of Object.entries(document.paths ?? {})) {
    for (const method of METHODS) {
      const operation = (item as Record<string, Operation | undefined>)[method];
      if (!operation) continue;
      const tag = operation.tags?.[0] ?? "other";
      byTag.set(tag, [...(byTag.get(tag) ?? []), section(method, path, operation)]);
    }
  }
  const { info, components } = document;
  return html`<!doctype html><html lang="en"><head><meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1"><title>${info.title} API</title>
<style>${raw(STYLE)}</style></head><body><main><h1>${info.title} API</h1><p>${info.description ?? ""}</p>
<p>The same document for machines: <a href="openapi.json">openapi.json</a> (OpenAPI 3.1).
Errors are problem documents (RFC 9457).</p>
<nav aria-label="Contents">${[...byTag.keys()].map((t) => html`<a href="#${t}">${t}</a> · `)}<a href="#shapes">shapes</a></nav>
${[...byTag].map(([tag, parts]) => html`<h2 id="${tag}">${tag}</h2>${parts}`)}
<h2 id="problems">problems</h2>
<ul>${problemNames.map((name) => html`<li><a href="problems/${name}">${name}</a>, ${problemTypes[name].status}: ${problemTypes[name].help}</li>`)}</ul>
<h2 id="shapes">shapes</h2>
${Object.entries(components?.schemas ?? {}).map(([name, schema]) => html`<section><h3>${name}</h3>${code(schema)}</section>`)}
</main></body></html>`;
}

function section(method: string, path: string, operation: Operation): Html {
  const { parameters = [], responses = {}, requestBody } = operation;
  const good = Object.entries(responses).filter(([status]) => status.startsWith("2"));
  return html`<section><h3><span class="method">${method.toUpperCase()}</span> <code>${path}</code></h3>
<p>${operation.summary ?? ""}</p>
<ul>${parameters.map((p) => html`<li><code>${p.name}</code> in ${p.in}${p.required ? "" : ", optional"}</li>`)}
${good.map(([status, r]) => html`<li>${status}: ${r.description ?? ""}</li>`)}</ul>
${requestBody ? html`<details><summary>Request</summary>${code(requestBody)}</details>` : ""}
<details><summary>Answers</summary>${code(responses)}</details></section>`;
}

const code = (value: unknown) => html`<pre tabindex="0">${JSON.stringify(value, null, 1)}</pre>`;

const STYLE = `:root{color-scheme:light dark}body{font:16px/1.55 Georgia,serif;margin:0 auto;max-width:46rem;padding:2rem 1rem}
h2{border-top:1px solid;margin-top:3rem;padding-top:.5rem}h3{font-size:1rem;margin:2rem 0 .25rem}
code,pre,.method{font-family:ui-monospace,monospace;font-size:.85rem}.method{letter-spacing:.05em}
pre{overflow:auto;max-height:30rem;border-left:2px solid;padding-left:1rem}summary{cursor:pointer}code{overflow-wrap:anywhere}`;
