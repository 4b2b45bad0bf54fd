/** What the tests use of the jsonld package, which brings no declarations of its own. */
declare module 'jsonld' {
  interface Loaded {
    documentUrl: string;
    contextUrl: string | undefined;
    document: object;
  }
  const jsonld: {
    expand(
      document: object,
      options: { documentLoader: (url: string) => Promise<Loaded>; base: string },
    ): Promise<object[]>;
  };
  export default jsonld;
}
