import { readdirSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

/** Reads out of the sources of the rules every text that a working can hold, without running them. */

export interface Written {
  text: string;
  /** True of a line's symbol, which is a word only at times. */
  symbol: boolean;
  where: string;
}

/** What stands in a place that the sources alone cannot fill: a name, a day, a number as text. */
export const UNKNOWN = "\u00a7";
/** More of them than this in one text say nothing new. */
const MOST = 400;

const sourcesBelow = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return entry.name === "text" ? [] : sourcesBelow(path);
    return entry.name.endsWith(".ts") ? [path] : [];
  });

/** The arguments of `line` and of `estimate` that people read: of the first the symbol too, where it is a word. */
const READ: Record<string, number[]> = { line: [0, 1, 2, 3, 4], estimate: [0, 1] };

export function writtenTexts(folder: string): Written[] {
  const paths = sourcesBelow(folder);
  const program = ts.createProgram(paths, {
    allowImportingTsExtensions: true,
    noEmit: true,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    target: ts.ScriptTarget.ES2022,
    strict: true,
    types: [],
  });
  const reader = new Reader(program, paths);
  const found = new Map<string, Written>();
  for (const path of paths) {
    const file = program.getSourceFile(path) as ts.SourceFile;
    const visit = (node: ts.Node): void => {
      if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
        const places = READ[node.expression.name.text];
        if (places && node.arguments.length >= 2) {
          const where = `${path.slice(folder.length + 1)}:${file.getLineAndCharacterOfPosition(node.getStart()).line + 1}`;
          for (const place of places) {
            const argument = node.arguments[place];
            const symbol = node.expression.name.text === "line" && place === 0;
            for (const text of argument ? reader.textsOf(argument) : []) {
              if (found.get(text)?.symbol !== false) found.set(text, { text, symbol, where });
            }
          }
        }
      }
      ts.forEachChild(node, visit);
    };
    visit(file);
  }
  return [...found.values()];
}

class Reader {
  readonly #checker: ts.TypeChecker;
  /** Every place where a property is given its value, by the property's name. */
  readonly #given = new Map<string, ts.Expression[]>();
  readonly #calls = new Map<ts.Symbol, ts.CallExpression[]>();
  /** Parameters that a function of ours is handed in by. */
  readonly #handed = new Map<ts.Symbol, ts.Symbol[]>();
  readonly #known = new Map<ts.Node, string[]>();

  constructor(program: ts.Program, paths: string[]) {
    this.#checker = program.getTypeChecker();
    const visit = (node: ts.Node): void => {
      if (ts.isPropertyAssignment(node)) this.#keep(node.name.getText(), node.initializer);
      if (ts.isShorthandPropertyAssignment(node)) this.#keep(node.name.text, node.name);
      // Called by its name alone: to type every method would take most of the time.
      if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
        const symbol = this.#symbolOf(node.expression);
        if (symbol) this.#calls.set(symbol, [...(this.#calls.get(symbol) ?? []), node]);
        this.#noteHanded(node, symbol?.valueDeclaration);
      }
      ts.forEachChild(node, visit);
    };
    for (const path of paths) visit(program.getSourceFile(path) as ts.SourceFile);
  }

  #keep(name: string, value: ts.Expression): void {
    this.#given.set(name, [...(this.#given.get(name) ?? []), value]);
  }

  #noteHanded(call: ts.CallExpression, made: ts.Declaration | undefined): void {
    if (!made || !ts.isFunctionDeclaration(made)) return;
    for (const [i, argument] of call.arguments.entries()) {
      const parameter = made.parameters[i];
      const given = ts.isIdentifier(argument) && this.#symbolOf(argument);
      const taken = parameter && this.#symbolOf(parameter.name);
      if (given && taken) this.#handed.set(given, [...(this.#handed.get(given) ?? []), taken]);
    }
  }

  #callsOf(symbol: ts.Symbol): ts.CallExpression[] {
    const names = [symbol, ...(this.#handed.get(symbol) ?? [])];
    return [...new Set(names)].flatMap((name) => this.#calls.get(name) ?? []);
  }

  #symbolOf(node: ts.Node): ts.Symbol | undefined {
    // `{ how }` names a property; meant is what it is given.
    const symbol = ts.isShorthandPropertyAssignment(node.parent)
      ? this.#checker.getShorthandAssignmentValueSymbol(node.parent)
      : this.#checker.getSymbolAtLocation(node);
    if (!symbol) return undefined;
    return symbol.flags & ts.SymbolFlags.Alias ? this.#checker.getAliasedSymbol(symbol) : symbol;
  }

  /** Every text that an expression can come to; numbers are filled with one, what is not known with a mark. */
  textsOf(node: ts.Expression, on: ts.Node[] = []): string[] {
    if (on.includes(node) || on.length > 25) return [UNKNOWN];
    const known = this.#known.get(node);
    if (known) return known;
    const texts = [...new Set(this.#read(node, [...on, node]))].slice(0, MOST);
    this.#known.set(node, texts);
    return texts;
  }

  #read(node: ts.Expression, on: ts.Node[]): string[] {
    const all = (nodes: readonly ts.Expression[]) => nodes.flatMap((one) => this.textsOf(one, on));
    if (ts.isStringLiteralLike(node)) return [node.text];
    if (ts.isParenthesizedExpression(node) || ts.isAsExpression(node) || ts.isNonNullExpression(node))
      return all([node.expression]);
    if (ts.isSatisfiesExpression(node)) return all([node.expression]);
    if (ts.isConditionalExpression(node)) return all([node.whenTrue, node.whenFalse]);
    if (ts.isTemplateExpression(node)) return this.#filled(node, on);
    if (ts.isBinaryExpression(node)) {
      const kind = node.operatorToken.kind;
      if (kind === ts.SyntaxKind.QuestionQuestionToken || kind === ts.SyntaxKind.BarBarToken)
        return all([node.left, node.right]);
    }
    const literals = this.#literalsOf(node);
    if (literals && literals.length < 2) return literals;
    if (literals && ts.isPropertyAccessExpression(node)) return literals;
    const followed = this.#followed(node, on);
    if (!literals) return followed ?? [UNKNOWN];
    // What is written may be less than the type allows, and the type less than what is written where it was narrowed.
    const both = followed?.filter((text) => literals.includes(text)) ?? [];
    return both.length > 0 && !followed?.includes(UNKNOWN) ? both : literals;
  }

  #filled(node: ts.TemplateExpression, on: ts.Node[]): string[] {
    let texts = [node.head.text];
    for (const span of node.templateSpans) {
      const fills = this.textsOf(span.expression, on);
      texts = texts.flatMap((begun) => fills.map((fill) => begun + fill + span.literal.text)).slice(0, MOST);
    }
    return texts;
  }

  /** Where the type alone says it: a number, or one of some words. */
  #literalsOf(node: ts.Expression): string[] | undefined {
    return this.#literalsOfType(this.#checker.getTypeAtLocation(node));
  }

  #literalsOfType(type: ts.Type): string[] | undefined {
    const parts = (type.isUnion() ? type.types : [type]).filter(
      (t) => !(t.flags & (ts.TypeFlags.Null | ts.TypeFlags.Undefined)),
    );
    if (parts.length === 0) return [];
    const texts = parts.map((t) => {
      if (t.flags & ts.TypeFlags.NumberLike) return "7";
      if (t.flags & ts.TypeFlags.BooleanLike) return this.#checker.typeToString(t);
      return t.isStringLiteral() ? t.value : undefined;
    });
    return texts.every((text) => text !== undefined) ? texts : undefined;
  }

  #followed(node: ts.Expression, on: ts.Node[]): string[] | undefined {
    if (ts.isCallExpression(node)) return this.#returned(node, on);
    // A source is cited as it is printed.
    if (ts.isPropertyAccessExpression(node) && node.name.text === "locator") return [];
    const symbol = this.#symbolOf(ts.isPropertyAccessExpression(node) ? node.name : node);
    if (ts.isElementAccessExpression(node)) return this.#ofTable(node, on);
    const declaration = symbol?.valueDeclaration ?? symbol?.declarations?.[0];
    if (!symbol || !declaration) return undefined;
    if (ts.isVariableDeclaration(declaration) && declaration.initializer && ts.isIdentifier(declaration.name))
      return this.textsOf(declaration.initializer, on);
    if (ts.isPropertyAssignment(declaration)) return this.textsOf(declaration.initializer, on);
    if (ts.isParameter(declaration)) return this.#handedIn(declaration, on);
    if (ts.isPropertySignature(declaration)) return this.#assigned(declaration, symbol, on);
    if (ts.isBindingElement(declaration)) return this.#taken(declaration, on);
    return undefined;
  }

  /** A function of ours: what it returns. */
  #returned(node: ts.CallExpression, on: ts.Node[]): string[] | undefined {
    if (ts.isPropertyAccessExpression(node.expression)) {
      if (node.expression.name.text === "toFixed") return ["7"];
      if (node.expression.name.text === "join") return this.#joined(node.expression.expression);
    }
    const symbol = this.#symbolOf(node.expression);
    let made: ts.Node | undefined = symbol?.valueDeclaration;
    if (made && ts.isVariableDeclaration(made)) made = made.initializer;
    if (!made || !ts.isFunctionLike(made) || !("body" in made) || !made.body) return undefined;
    const body = made.body as ts.ConciseBody;
    if (!ts.isBlock(body)) return this.textsOf(body, on);
    const returned: ts.Expression[] = [];
    const visit = (inner: ts.Node): void => {
      if (ts.isReturnStatement(inner) && inner.expression) returned.push(inner.expression);
      if (!ts.isFunctionLike(inner)) ts.forEachChild(inner, visit);
    };
    visit(body);
    return returned.flatMap((one) => this.textsOf(one, on));
  }

  /** A list of words: any one of them. */
  #joined(list: ts.Expression): string[] | undefined {
    const [element] = this.#checker.getTypeArguments(
      this.#checker.getTypeAtLocation(list) as ts.TypeReference,
    );
    return element && this.#literalsOfType(element);
  }

  /** A parameter: what the calls of its function hand in. */
  #handedIn(parameter: ts.ParameterDeclaration, on: ts.Node[]): string[] | undefined {
    const made = parameter.parent;
    const name = ts.isFunctionDeclaration(made)
      ? made.name
      : ts.isVariableDeclaration(made.parent)
        ? made.parent.name
        : undefined;
    const symbol = name && this.#symbolOf(name);
    const calls = symbol ? this.#callsOf(symbol) : [];
    if (calls.length === 0) return undefined;
    const place = made.parameters.indexOf(parameter);
    return calls.flatMap((call) => {
      const argument = call.arguments[place] ?? parameter.initializer;
      return argument ? this.textsOf(argument, on) : [];
    });
  }

  /** A property of one of our types: all that is ever given to it. */
  #assigned(declaration: ts.PropertySignature, symbol: ts.Symbol, on: ts.Node[]): string[] | undefined {
    const given = (this.#given.get(symbol.name) ?? []).filter((value) => {
      const literal = value.parent.parent;
      if (!ts.isObjectLiteralExpression(literal)) {
        const holder = value.parent;
        return ts.isObjectLiteralExpression(holder) && this.#isOf(holder, symbol.name, declaration);
      }
      return this.#isOf(literal, symbol.name, declaration);
    });
    return given.length > 0 ? given.flatMap((value) => this.textsOf(value, on)) : undefined;
  }

  #isOf(literal: ts.ObjectLiteralExpression, name: string, declaration: ts.Node): boolean {
    const type = this.#checker.getContextualType(literal);
    const parts = type ? (type.isUnion() ? type.types : [type]) : [];
    return parts.some((part) =>
      part.getProperty(name)?.declarations?.includes(declaration as ts.Declaration),
    );
  }

  /** A table of ours, by whatever key. */
  #ofTable(node: ts.ElementAccessExpression, on: ts.Node[]): string[] | undefined {
    const declaration = this.#symbolOf(node.expression)?.valueDeclaration;
    const table =
      declaration && ts.isVariableDeclaration(declaration) ? declaration.initializer : node.expression;
    if (!table || !ts.isObjectLiteralExpression(table)) return undefined;
    return table.properties.flatMap((p) =>
      ts.isPropertyAssignment(p) ? this.textsOf(p.initializer, on) : [],
    );
  }

  /** A name taken out of an object. */
  #taken(element: ts.BindingElement, on: ts.Node[]): string[] | undefined {
    const type = this.#checker.getTypeAtLocation(element.parent);
    const name = (element.propertyName ?? element.name).getText();
    const property = type.getProperty(name);
    const declaration = property?.declarations?.[0];
    if (!property || !declaration) return undefined;
    if (ts.isPropertySignature(declaration)) return this.#assigned(declaration, property, on);
    if (ts.isPropertyAssignment(declaration)) return this.textsOf(declaration.initializer, on);
    return undefined;
  }
}
