/** The grid's own style sheets, which the bundler takes out of its packages. */
declare module '*.css';
