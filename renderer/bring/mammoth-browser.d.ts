/** The library's own bundle for browsers: the same functions under another name. */
declare module 'mammoth/mammoth.browser.js' {
  import mammoth from 'mammoth';
  export default mammoth;
}
