import ts from 'typescript';

type Callable = ts.FunctionDeclaration | ts.ArrowFunction | ts.FunctionExpression;

/**
 * Every place where a sentence of the catalogue, or three words in a row, comes into the facts of a
 * `RondureError`: written there, in a constant, or given to a function that hands it on.
 *
 * @returns how many errors were followed, and the text of each place after `file:line`
 */
export function saidInFacts(program: ts.Program, files: readonly ts.SourceFile[]) {
  const checker = program.getTypeChecker();
  const found = new Set<string>();
  const walked = new Set<ts.Node>();
  const handedOn = new Map<Callable, Set<number>>();
  let errors = 0;

  const inWords = (declaration: ts.Node | undefined) =>
    declaration?.getSourceFile().fileName.includes('/src/words/') === true;
  const isText = (type: ts.Type) => (type.flags & ts.TypeFlags.String) !== 0;
  const holdsText = (type: ts.Type): boolean =>
    isText(type) ||
    (type.isUnion() && type.types.some(holdsText)) ||
    // One that is written where it is made, not one of a class or a file.
    (type.symbol?.name === '__object' &&
      type.getProperties().some((one) => holdsText(checker.getTypeOfSymbol(one)))) ||
    (checker.isArrayType(type) &&
      checker.getTypeArguments(type as ts.TypeReference).some(holdsText));

  function report(node: ts.Node): void {
    const { fileName } = node.getSourceFile();
    const { line } = node.getSourceFile().getLineAndCharacterOfPosition(node.getStart());
    const place = `${fileName.slice(fileName.indexOf('/src/') + 1)}:${line + 1}`;
    found.add(`${place} ${node.getText().replace(/\s+/g, ' ')}`);
  }

  function follow(node: ts.Node): void {
    if (walked.has(node)) return;
    walked.add(node);
    if (ts.isTypeNode(node)) return;
    if (isSentence(node)) return report(node);
    if (ts.isIdentifier(node)) return followName(node);
    if (ts.isPropertyAssignment(node)) return follow(node.initializer);
    // One field of something tells nothing of its others; what a method is called on is in its answer.
    if (ts.isPropertyAccessExpression(node)) return;
    if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
      follow(node.expression.expression);
    }
    ts.forEachChild(node, follow);
  }

  function isSentence(node: ts.Node): boolean {
    if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateTail(node)) {
      return /\p{L}+ \p{L}+ \p{L}+/u.test(node.text);
    }
    if (ts.isCallExpression(node)) {
      const signature = checker.getResolvedSignature(node);
      const declaration = signature?.getDeclaration();
      if (!signature || !isText(signature.getReturnType())) return false;
      return inWords(declaration) || /Sentence$/.test(node.expression.getText());
    }
    if (!ts.isPropertyAccessExpression(node)) return false;
    const [declaration] = checker.getSymbolAtLocation(node)?.declarations ?? [];
    return inWords(declaration) && isText(checker.getTypeAtLocation(node));
  }

  function followName(node: ts.Identifier): void {
    const symbol = ts.isShorthandPropertyAssignment(node.parent)
      ? checker.getShorthandAssignmentValueSymbol(node.parent)
      : checker.getSymbolAtLocation(node);
    const declaration = symbol?.valueDeclaration;
    if (!declaration) return;
    const made = ts.isVariableDeclaration(declaration) ? declaration.initializer : undefined;
    if (made && ts.isObjectLiteralExpression(made)) return follow(made);
    if (!holdsText(checker.getTypeAtLocation(node))) return;
    if (made) return follow(made);
    let owner: ts.Node = declaration;
    if (ts.isBindingElement(declaration)) {
      const name = (declaration.propertyName ?? declaration.name).getText();
      const [origin] =
        checker.getTypeAtLocation(declaration.parent).getProperty(name)?.declarations ?? [];
      if (inWords(origin) && isText(checker.getTypeAtLocation(declaration))) report(node);
      while (ts.isBindingElement(owner) || ts.isBindingName(owner)) owner = owner.parent;
    }
    if (ts.isParameter(owner)) followCallers(owner);
  }

  function followCallers(parameter: ts.ParameterDeclaration): void {
    const callable = parameter.parent as Callable;
    const places = handedOn.get(callable) ?? new Set();
    handedOn.set(callable, places);
    const place = callable.parameters.indexOf(parameter);
    if (places.has(place)) return;
    places.add(place);
    const name = ts.isVariableDeclaration(callable.parent) ? callable.parent.name : callable.name;
    const called = name && checker.getSymbolAtLocation(name);
    if (!called) return;
    for (const call of calls.get(name.getText()) ?? []) {
      let symbol = checker.getSymbolAtLocation(call.expression);
      if (symbol && symbol.flags & ts.SymbolFlags.Alias) symbol = checker.getAliasedSymbol(symbol);
      if (symbol !== called) continue;
      const given = call.arguments.slice(place);
      (parameter.dotDotDotToken ? given : given.slice(0, 1)).forEach(follow);
    }
  }

  /** By the name that is called. */
  const calls = new Map<string, ts.CallExpression[]>();
  const thrown: ts.NewExpression[] = [];
  const collect = (node: ts.Node): void => {
    if (ts.isCallExpression(node)) {
      const name = node.expression.getText();
      calls.set(name, (calls.get(name) ?? []).concat(node));
    }
    if (ts.isNewExpression(node) && node.expression.getText() === 'RondureError') thrown.push(node);
    ts.forEachChild(node, collect);
  };
  files.forEach(collect);
  for (const { arguments: given = [] } of thrown) {
    errors++;
    if (given[1]) follow(given[1]);
  }
  return { errors, found: [...found].sort() };
}
