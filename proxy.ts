import { NextResponse, type NextRequest } from 'next/server';

/**
 * The content security policy of every page. Scripts and style sheets run only with this request's
 * nonce; `style` attributes are allowed, since figures and the scene place their labels with them.
 * React's development build needs eval for its stack traces and a socket for reloading.
 */
function contentSecurityPolicy(nonce: string): string {
  const developing = process.env.NODE_ENV === 'development';
  return [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${developing ? " 'unsafe-eval'" : ''}`,
    `style-src 'self' ${developing ? "'unsafe-inline'" : `'nonce-${nonce}'`}`,
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' blob: data:",
    "font-src 'self'",
    `connect-src 'self'${developing ? ' ws:' : ''}`,
    "worker-src 'self' blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; ');
}

export function proxy(request: NextRequest): NextResponse {
  const nonce = crypto.randomUUID().replaceAll('-', '');
  const policy = contentSecurityPolicy(nonce);
  const headers = new Headers(request.headers);
  // Next reads the nonce from the request's policy and puts it on its own scripts.
  headers.set('x-nonce', nonce);
  headers.set('content-security-policy', policy);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set('content-security-policy', policy);
  return response;
}

export const config = {
  matcher: ['/((?!_next/static|_next/image|sky-data|favicon.ico).*)'],
};
