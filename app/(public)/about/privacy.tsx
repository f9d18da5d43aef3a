/** What is stored, in plain words. It must stay true to prisma/schema.prisma. */
export function Privacy() {
  return (
    <>
      <h3 className="mt-6 text-lg font-semibold first:mt-0">Visitors</h3>
      <p>
        Nothing. The sky of a visitor’s round is in the address of the page, so that nothing needs
        to be stored.
      </p>
      <h3 className="mt-6 text-lg font-semibold first:mt-0">Students</h3>
      <p>
        A display name, for which a pseudonym will do; a card number; the three words of the card,
        as a hash from which they cannot be read back; what was done in each attempt and its marks;
        each question that was practised, its answer and when; more attempts or more time where the
        teacher grants them; and what the teacher notes at the telescope. No email address, no birth
        date, no photo, no precise place: a class sees its sky by the town’s name and coordinates
        rounded to a tenth of a degree.
      </p>
      <p>
        A student sees their own work and nobody else’s. The teachers of the class see it all. A
        teacher can hand out or delete what is kept about one student, and delete the whole class.
        Every class has a date after which it is to be deleted, by default ninety days after the end
        of the school year; whoever runs this Duskbench removes what is past it with one command.
      </p>
      <h3 className="mt-6 text-lg font-semibold first:mt-0">Teachers</h3>
      <p>
        A name, an email address for signing in, and a hash of the password. No mail is sent. A
        substitute needs none of it: a link lends them one class to read until the end of the day.
      </p>
      <h3 className="mt-6 text-lg font-semibold first:mt-0">In the browser</h3>
      <p>
        One cookie for the sign-in, which ends after four hours without use for students and twelve
        for teachers; one that means nothing but “this device”, so that wrong tries can be slowed
        down; one for the look you choose. No script, typeface or picture comes from anywhere else.
        The log of sign-ins holds no network addresses.
      </p>
      <p className="text-sm text-soft">
        Which laws apply to you, your school knows best. People who write about school data often
        point to COPPA and FERPA in the United States and to articles 5, 15 to 20 and 25 of the GDPR
        in Europe; this is a pointer, not advice.
      </p>
    </>
  );
}
