// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Preloaded into the program (LD_PRELOAD): makes the n-th call that touches the disk below a folder fail, and
// writes down all such calls, with what was written, for the replay of a power cut.
//
//   PLATEAU_FAULTS_FOLDER  only files below it count; an absolute path without links in it
//   PLATEAU_FAULTS         CALL:NUMBER:KIND, for example write:7:28
//       CALL    open, write, sync, truncate, remove, rename, or any
//       NUMBER  which of them, from 1
//       KIND    a number of errno.h, once; the same with a + behind it, from then on;
//               short: half is written, and from then on the disk is full;
//               gone: the folder is moved away (as a stick that is pulled), and the call goes on as it can;
//               kill: the program is killed before the call
//   PLATEAU_FAULTS_LOG     a file outside the folder; a line for every call, in the order in which they were
//   made:
//       CALL<TAB>path<TAB>second path or offset<TAB>bytes that follow the line
//       Whatever goes to standard output stands in it as "said".
//   PLATEAU_FAULTS_BYTES   set: the log has the bytes as well
#include <cerrno>
#include <climits>
#include <csignal>
#include <cstdarg>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <dlfcn.h>
#include <fcntl.h>
#include <mutex>
#include <string>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/types.h>
#include <sys/uio.h>
#include <unistd.h>

namespace {

template <class Function> Function next(const char *name)
{
    return reinterpret_cast<Function>(::dlsym(RTLD_NEXT, name));
}

std::string variable(const char *name)
{
    const char *value = std::getenv(name);
    return value ? value : "";
}

class Shim
{
public:
    static Shim &one()
    {
        static auto *shim = new Shim; // never destroyed: files are closed after main, too
        return *shim;
    }

    bool counts(const std::string &path) const
    {
        // The folder itself as well: it is synced after a file came or went.
        return !m_folder.empty() && (path + '/').compare(0, m_folder.size(), m_folder) == 0;
    }
    bool counts(int file, std::string &path) const
    {
        path = pathOf(file);
        return counts(path);
    }

    static std::string pathOf(int file)
    {
        char name[32];
        std::snprintf(name, sizeof name, "/proc/self/fd/%d", file);
        char path[PATH_MAX];
        const ssize_t size = ::readlink(name, path, sizeof path);
        return size > 0 ? std::string(path, size_t(size)) : std::string();
    }

    static std::string absolute(int folder, const char *path)
    {
        if (!path)
            return {};
        if (path[0] == '/')
            return path;
        char here[PATH_MAX];
        const std::string base =
            folder == AT_FDCWD ? (::getcwd(here, sizeof here) ? here : "") : pathOf(folder);
        return base + '/' + path;
    }

    enum class Answer { GoOn, Fail, Half };

    /// One more call of that kind.
    Answer ask(const char *call)
    {
        const std::lock_guard lock(m_mutex);
        if (m_kind.empty() || (m_call != "any" && m_call != call))
            return m_isFull && std::strcmp(call, "write") == 0 ? fail(ENOSPC) : Answer::GoOn;
        ++m_number;
        if (m_number < m_wanted || (m_number > m_wanted && !m_isLasting))
            return m_isFull && std::strcmp(call, "write") == 0 ? fail(ENOSPC) : Answer::GoOn;
        if (m_kind == "gone") {
            const std::string away = m_folder.substr(0, m_folder.size() - 1) + "-gone";
            ::syscall(SYS_rename, m_folder.substr(0, m_folder.size() - 1).c_str(), away.c_str());
            return Answer::GoOn;
        }
        if (m_kind == "kill")
            ::kill(::getpid(), SIGKILL);
        if (m_kind == "short") {
            if (std::strcmp(call, "write") != 0)
                return Answer::GoOn;
            m_isFull = true;
            return Answer::Half;
        }
        return fail(std::atoi(m_kind.c_str()));
    }

    void log(const char *call, const std::string &path, const std::string &more = {},
             const void *bytes = nullptr, size_t size = 0)
    {
        if (m_log < 0)
            return;
        const std::lock_guard lock(m_mutex);
        const size_t kept = m_withBytes || std::strcmp(call, "said") == 0 ? size : 0;
        std::string record =
            std::string(call) + '\t' + path + '\t' + more + '\t' + std::to_string(kept) + '\n';
        if (kept > 0)
            record.append(static_cast<const char *>(bytes), kept);
        ::syscall(SYS_write, m_log, record.data(), record.size());
    }

private:
    Shim()
    {
        m_folder = variable("PLATEAU_FAULTS_FOLDER");
        if (!m_folder.empty() && m_folder.back() != '/')
            m_folder += '/';
        const std::string plan = variable("PLATEAU_FAULTS");
        const size_t first = plan.find(':');
        const size_t second = plan.find(':', first + 1);
        if (first != std::string::npos && second != std::string::npos) {
            m_call = plan.substr(0, first);
            m_wanted = std::atoi(plan.substr(first + 1).c_str());
            m_kind = plan.substr(second + 1);
            m_isLasting = m_kind.back() == '+';
        }
        const std::string log = variable("PLATEAU_FAULTS_LOG");
        if (!log.empty())
            m_log = int(::syscall(SYS_openat, AT_FDCWD, log.c_str(),
                                  O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600));
        m_withBytes = !variable("PLATEAU_FAULTS_BYTES").empty();
    }

    static Answer fail(int error)
    {
        errno = error;
        return Answer::Fail;
    }

    std::string m_folder;
    std::string m_call;
    std::string m_kind;
    int m_wanted = 0;
    int m_number = 0;
    bool m_isLasting = false;
    bool m_isFull = false;
    bool m_withBytes = false;
    int m_log = -1;
    std::mutex m_mutex;
};

using Answer = Shim::Answer;

/// A call on a path that succeeds with 0; logged once it has.
template <class Real>
int onPath(const char *call, const std::string &path, const std::string &other, Real real)
{
    Shim &shim = Shim::one();
    if (!shim.counts(path) && !shim.counts(other))
        return real();
    if (shim.ask(call) == Answer::Fail)
        return -1;
    const int result = real();
    if (result == 0)
        shim.log(call, path, other);
    return result;
}

template <class Real> int opened(int folder, const char *name, int flags, Real real)
{
    Shim &shim = Shim::one();
    const std::string path = Shim::absolute(folder, name);
    if (!shim.counts(path))
        return real();
    if (shim.ask("open") == Answer::Fail)
        return -1;
    struct stat before {
    };
    const bool isNew = (flags & O_CREAT) != 0 && ::stat(path.c_str(), &before) != 0;
    const int file = real();
    if (file >= 0)
        shim.log("open", path, isNew ? "new" : (flags & O_TRUNC) != 0 ? "emptied" : "");
    return file;
}

template <class Real> ssize_t wrote(int file, const void *bytes, size_t size, off64_t offset, Real real)
{
    Shim &shim = Shim::one();
    std::string path;
    if (!shim.counts(file, path)) {
        const ssize_t result = real(size);
        if (file == STDOUT_FILENO && result > 0)
            shim.log("said", {}, {}, bytes, size_t(result));
        return result;
    }
    const Answer answer = shim.ask("write");
    if (answer == Answer::Fail)
        return -1;
    if (offset < 0)
        offset = ::lseek64(file, 0, SEEK_CUR);
    const ssize_t result = real(answer == Answer::Half && size > 1 ? size / 2 : size);
    if (result > 0)
        shim.log("write", path, std::to_string(offset), bytes, size_t(result));
    return result;
}

template <class Real> int onFile(const char *call, int file, const std::string &more, Real real)
{
    Shim &shim = Shim::one();
    std::string path;
    if (!shim.counts(file, path))
        return real();
    if (shim.ask(call) == Answer::Fail)
        return -1;
    const int result = real();
    if (result == 0)
        shim.log(call, path, more);
    return result;
}

mode_t modeOf(int flags, va_list arguments)
{
    return (flags & (O_CREAT | O_TMPFILE)) != 0 ? mode_t(va_arg(arguments, unsigned)) : 0;
}

} // namespace

#define EXPORTED __attribute__((visibility("default")))

extern "C" {

#define OPENS(name)                                                                                          \
    EXPORTED int name(const char *path, int flags, ...)                                                      \
    {                                                                                                        \
        static const auto real = next<int (*)(const char *, int, ...)>(#name);                               \
        va_list arguments;                                                                                   \
        va_start(arguments, flags);                                                                          \
        const mode_t mode = modeOf(flags, arguments);                                                        \
        va_end(arguments);                                                                                   \
        return opened(AT_FDCWD, path, flags, [&] { return real(path, flags, mode); });                       \
    }
OPENS(open)
OPENS(open64)

#define OPENS_AT(name)                                                                                       \
    EXPORTED int name(int folder, const char *path, int flags, ...)                                          \
    {                                                                                                        \
        static const auto real = next<int (*)(int, const char *, int, ...)>(#name);                          \
        va_list arguments;                                                                                   \
        va_start(arguments, flags);                                                                          \
        const mode_t mode = modeOf(flags, arguments);                                                        \
        va_end(arguments);                                                                                   \
        return opened(folder, path, flags, [&] { return real(folder, path, flags, mode); });                 \
    }
OPENS_AT(openat)
OPENS_AT(openat64)

EXPORTED ssize_t write(int file, const void *bytes, size_t size)
{
    static const auto real = next<ssize_t (*)(int, const void *, size_t)>("write");
    return wrote(file, bytes, size, -1, [&](size_t some) { return real(file, bytes, some); });
}

#define WRITES_AT(name)                                                                                      \
    EXPORTED ssize_t name(int file, const void *bytes, size_t size, off64_t offset)                          \
    {                                                                                                        \
        static const auto real = next<ssize_t (*)(int, const void *, size_t, off64_t)>(#name);               \
        return wrote(file, bytes, size, offset,                                                              \
                     [&](size_t some) { return real(file, bytes, some, offset); });                          \
    }
WRITES_AT(pwrite)
WRITES_AT(pwrite64)

#define SYNCS(name)                                                                                          \
    EXPORTED int name(int file)                                                                              \
    {                                                                                                        \
        static const auto real = next<int (*)(int)>(#name);                                                  \
        return onFile("sync", file, {}, [&] { return real(file); });                                         \
    }
SYNCS(fsync)
SYNCS(fdatasync)

#define TRUNCATES(name)                                                                                      \
    EXPORTED int name(int file, off64_t size) noexcept                                                       \
    {                                                                                                        \
        static const auto real = next<int (*)(int, off64_t)>(#name);                                         \
        return onFile("truncate", file, std::to_string(size), [&] { return real(file, size); });             \
    }
TRUNCATES(ftruncate)
TRUNCATES(ftruncate64)

EXPORTED int unlink(const char *path) noexcept
{
    static const auto real = next<int (*)(const char *)>("unlink");
    return onPath("remove", Shim::absolute(AT_FDCWD, path), {}, [&] { return real(path); });
}

EXPORTED int unlinkat(int folder, const char *path, int flags) noexcept
{
    static const auto real = next<int (*)(int, const char *, int)>("unlinkat");
    return onPath("remove", Shim::absolute(folder, path), {}, [&] { return real(folder, path, flags); });
}

EXPORTED int rmdir(const char *path) noexcept
{
    static const auto real = next<int (*)(const char *)>("rmdir");
    return onPath("remove", Shim::absolute(AT_FDCWD, path), {}, [&] { return real(path); });
}

EXPORTED int mkdir(const char *path, mode_t mode) noexcept
{
    static const auto real = next<int (*)(const char *, mode_t)>("mkdir");
    return onPath("open", Shim::absolute(AT_FDCWD, path), {}, [&] { return real(path, mode); });
}

EXPORTED int rename(const char *from, const char *to) noexcept
{
    static const auto real = next<int (*)(const char *, const char *)>("rename");
    return onPath("rename", Shim::absolute(AT_FDCWD, from), Shim::absolute(AT_FDCWD, to),
                  [&] { return real(from, to); });
}

EXPORTED int link(const char *from, const char *to) noexcept
{
    static const auto real = next<int (*)(const char *, const char *)>("link");
    return onPath("link", Shim::absolute(AT_FDCWD, from), Shim::absolute(AT_FDCWD, to),
                  [&] { return real(from, to); });
}

EXPORTED int linkat(int folder, const char *from, int toFolder, const char *to, int flags) noexcept
{
    static const auto real = next<int (*)(int, const char *, int, const char *, int)>("linkat");
    return onPath("link", Shim::absolute(folder, from), Shim::absolute(toFolder, to),
                  [&] { return real(folder, from, toFolder, to, flags); });
}

EXPORTED int renameat2(int folder, const char *from, int toFolder, const char *to, unsigned flags) noexcept
{
    static const auto real = next<int (*)(int, const char *, int, const char *, unsigned)>("renameat2");
    return onPath("rename", Shim::absolute(folder, from), Shim::absolute(toFolder, to),
                  [&] { return real(folder, from, toFolder, to, flags); });
}
}
