/* What libmd asks of its build: nothing that sha2.c needs. */
