/* setjmp.h - wasi-libc has none. The compiler turns setjmp and longjmp into WebAssembly's
 * exceptions, with the help of long_jump.c, and keeps in env only a number. */
#ifndef EAVEMARK_PAGE_SETJMP_H
#define EAVEMARK_PAGE_SETJMP_H

typedef unsigned jmp_buf[4];

int setjmp(jmp_buf env) __attribute__((returns_twice));
_Noreturn void longjmp(jmp_buf env, int value);

#endif
