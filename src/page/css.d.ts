/** The page's own style sheet, which the bundler takes in. */
declare module '*.css';
