/* long_jump.c - what the compiler calls for setjmp and longjmp (LLVM 14,
 * -wasm-enable-sjlj), written from its description.
 *
 * Each function that calls setjmp keeps a table of the jumps that may come back to it: a
 * number made by save, and the label to go on from. The table ends with the number 0 and
 * holds size entries beside that one. It is the function's, which frees it.
 */
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>

struct jump {
    uint32_t id, label;
};

/* What a throw carries: the compiler reads both members. */
static struct {
    uint32_t *env;
    int value;
} thrown;

/* A second value that a function returns. */
static int second;

void setTempRet0(int value);
int getTempRet0(void);
struct jump *saveSetjmp(uint32_t *env, uint32_t label, struct jump *table, uint32_t size);
uint32_t testSetjmp(uint32_t id, const struct jump *table, uint32_t size);
_Noreturn void __wasm_longjmp(uint32_t *env, int value);

void setTempRet0(int value)
{
    second = value;
}

int getTempRet0(void)
{
    return second;
}

/* The table, perhaps a larger one, whose size is the second value. */
struct jump *saveSetjmp(uint32_t *env, uint32_t label, struct jump *table, uint32_t size)
{
    static uint32_t last;
    uint32_t used = 0;
    *env = ++last;
    while (used < size && table[used].id != 0)
        used++;
    if (used == size) {
        size *= 2;
        table = realloc(table, (size + 1) * sizeof(*table));
        if (table == NULL)
            abort();
    }
    table[used] = (struct jump){*env, label};
    table[used + 1].id = 0;
    second = (int)size;
    return table;
}

/* The label of that jump; 0: it goes on to a caller. */
uint32_t testSetjmp(uint32_t id, const struct jump *table, uint32_t size)
{
    for (uint32_t i = 0; i < size && table[i].id != 0; i++)
        if (table[i].id == id)
            return table[i].label;
    return 0;
}

_Noreturn void __wasm_longjmp(uint32_t *env, int value)
{
    thrown.env = env;
    thrown.value = value == 0 ? 1 : value;
    __builtin_wasm_throw(1, &thrown);
    __builtin_unreachable();
}
